# make demo       installs seamcheck into .venv and reviews a sound and a spoiled sample model
# make test       installs what the tests need and runs the quick suite; what failed runs again, told in detail
# make thorough   the long suite
# make bench      measures speed and memory against their bars (some minutes)
# make fuzz       reviews VARIANTS damaged files (1500); KEEP=FILE keeps the result and goes on from it
# make page       bundles the review page's script anew (needs Node 20 or newer and npm)
# make tour       draws the pictures of docs/report (needs chromium with its driver)
# make clean      removes .venv and caches

PYTHON ?= python3
VENV := .venv
BIN := $(VENV)/bin
# one more than there are cores: tests of the page and of children wait for others
WORKERS ?= $(shell $(PYTHON) -c 'import os; print((os.cpu_count() or 1) + 1)')

.PHONY: demo test check quick thorough bench fuzz page tour clean

demo: $(VENV)/installed
	$(BIN)/seamcheck samples out/samples
	$(BIN)/seamcheck review out/samples/sound.step
	@echo
	$(BIN)/seamcheck review out/samples/rib-height.step --html out/rib-height.html || [ $$? -eq 1 ]

test: check quick

check: $(VENV)/installed-dev
	$(BIN)/ruff check .
	$(BIN)/ruff format --check .
	$(BIN)/mypy
	$(BIN)/lint-imports

quick: $(VENV)/installed-dev
	$(BIN)/pytest -m "not thorough" -n $(WORKERS) --dist worksteal --assert=plain $(PYTEST) || \
		{ $(BIN)/pytest -q --last-failed --last-failed-no-failures none; exit 1; }

thorough: $(VENV)/installed-dev
	HYPOTHESIS_PROFILE=thorough $(BIN)/pytest -m thorough $(PYTEST)

bench: $(VENV)/installed-dev
	$(BIN)/python -m benchmarks $(BENCH)

fuzz: $(VENV)/installed-dev
	$(BIN)/pytest -s -m thorough tests/fuzz -k thousands --variants $(or $(VARIANTS),1500) --keep "$(KEEP)" --seconds $(or $(SECONDS),30) --workers $(or $(WORKERS),2) $(PYTEST)

page:
	cd frontend && npm ci --no-audit --no-fund && npm run check && npm run build

tour: $(VENV)/installed-dev
	$(BIN)/python docs/report/draw_tour.py
	$(BIN)/python docs/report/draw_samples.py

$(VENV)/bin/python:
	@$(PYTHON) -c 'import sys; sys.exit("seamcheck needs Python 3.11 or newer; this is " + sys.version.split()[0] + ". Name another one: make PYTHON=python3.12" if sys.version_info < (3, 11) else 0)'
	$(PYTHON) -m venv $(VENV)

$(VENV)/installed: pyproject.toml | $(VENV)/bin/python
	$(BIN)/python -m pip install --quiet --upgrade pip
	$(BIN)/python -m pip install --quiet --editable .
	@touch $@

$(VENV)/installed-dev: pyproject.toml | $(VENV)/bin/python
	$(BIN)/python -m pip install --quiet --upgrade pip
	$(BIN)/python -m pip install --quiet --editable ".[dev]"
	@touch $@ $(VENV)/installed

clean:
	rm -rf $(VENV) .pytest_cache .mypy_cache .ruff_cache .hypothesis out

"""Every quantity, rule, reason and caution, declared once. The ground floor: it imports nothing of ours but errors."""

"""Hard models: parts as strangers draw them, with what must come out."""

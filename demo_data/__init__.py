"""The demo: an invented bench of five machines, its meter logs and the generator that made them."""

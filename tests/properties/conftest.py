"""Settings of the property tests."""

from hypothesis import settings

# A machine that is busy with other things must not fail a law. What is set already (a fixed seed where tests
# run unattended) stays.
settings.register_profile("patient", parent=settings(), deadline=None)
settings.load_profile("patient")

//! What to study and how it goes: questions written from the catalogue, memory, mastery, readiness and practice forms.

//! The schema of content/, its parser, its checks and its packed form.

//! Pure reasoning over the catalogue: findings to plan, tray, order and timing, each conclusion with its reasons.

//! Placeholder
use crate::repo::Repo;
use anyhow::Result;
/// x
pub fn bench(_repo: &Repo) -> Result<()> {
    Ok(())
}

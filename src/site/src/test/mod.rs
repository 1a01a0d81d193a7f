//! Placeholder
use crate::{options::Options, repo::Repo};
use anyhow::Result;
/// x
pub fn test(_repo: &Repo, _options: &Options) -> Result<()> {
    Ok(())
}

//! The package: the manifest, the page that starts it, and the site's files.

use super::super::{
    xml::escaped,
    zip::{self, File, ZipError},
};
use crate::assignment::Assignment;
use core::fmt::Write;

/// The page that a school's system opens. It leads on to the assignment; its
/// path has no fragment, which some systems would drop.
pub const LAUNCH: &str = "launch.html";

/// A package of an assignment. `site` holds the files of the page by their
/// paths, `start` is the relative link within it that opens the assignment:
/// `index.html#/set/…`.
///
/// # Errors
/// [`ZipError`] where the files do not fit an archive.
pub fn package(assignment: &Assignment, site: &[File], start: &str) -> Result<Vec<u8>, ZipError> {
    let mut files = vec![
        File::text("imsmanifest.xml", manifest(assignment, site)),
        File::text(LAUNCH, launch(assignment, start)),
    ];
    files.extend_from_slice(site);
    zip::write(&files)
}

fn launch(assignment: &Assignment, start: &str) -> String {
    let (name, start) = (escaped(&assignment.name()), escaped(start));
    format!(
        "<!doctype html>\n<html lang=\"en\">\n<meta charset=\"utf-8\">\n<title>{name}</title>\n<meta http-equiv=\"refresh\" content=\"0; url={start}\">\n<p><a href=\"{start}\">Open {name}</a></p>\n</html>\n"
    )
}

/// The manifest. It names no mastery score: a system that is given one overrules
/// the status of a sitting that was only interrupted, and the page says by
/// itself whether enough is right.
fn manifest(assignment: &Assignment, site: &[File]) -> String {
    let id = format!("trayward-{:08x}", assignment.id());
    let name = escaped(&assignment.name());
    let mut files = format!("      <file href=\"{LAUNCH}\"/>\n");
    for file in site {
        // Writing to a String cannot fail.
        let _ = writeln!(files, "      <file href=\"{}\"/>", escaped(&file.path));
    }
    format!(
        r#"<?xml version="1.0" encoding="UTF-8"?>
<manifest identifier="{id}" version="1.0"
    xmlns="http://www.imsproject.org/xsd/imscp_rootv1p1p2"
    xmlns:adlcp="http://www.adlnet.org/xsd/adlcp_rootv1p2"
    xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
    xsi:schemaLocation="http://www.imsproject.org/xsd/imscp_rootv1p1p2 imscp_rootv1p1p2.xsd http://www.adlnet.org/xsd/adlcp_rootv1p2 adlcp_rootv1p2.xsd">
  <metadata>
    <schema>ADL SCORM</schema>
    <schemaversion>1.2</schemaversion>
  </metadata>
  <organizations default="{id}-organization">
    <organization identifier="{id}-organization">
      <title>{name}</title>
      <item identifier="{id}-item" identifierref="{id}-resource" isvisible="true">
        <title>{name}</title>
      </item>
    </organization>
  </organizations>
  <resources>
    <resource identifier="{id}-resource" type="webcontent" adlcp:scormtype="sco" href="{LAUNCH}">
{files}    </resource>
  </resources>
</manifest>
"#
    )
}

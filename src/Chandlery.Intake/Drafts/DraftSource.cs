namespace Chandlery.Intake.Drafts;

/// <summary>A PDF that a draft rests on.</summary>
/// <param name="File">File name without folders.</param>
/// <param name="Sha256">Hash of its bytes, so that the review can be traced to the very file.</param>
/// <param name="Kind">What it is.</param>
public sealed record DraftSource(string File, string Sha256, SheetKind Kind);

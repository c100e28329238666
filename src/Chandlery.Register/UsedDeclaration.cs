namespace Chandlery.Register;

/// <summary>A declaration as it was when an entry was made.</summary>
/// <param name="Path">Its file, relative to the maker's folder.</param>
/// <param name="Sha256">Hash of its text.</param>
public sealed record UsedDeclaration(string Path, string Sha256);

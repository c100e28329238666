namespace Chandlery.Register;

/// <summary>A document that was issued.</summary>
/// <param name="Name">File name.</param>
/// <param name="Sha256">Hash of its bytes.</param>
public sealed record IssuedDocument(string Name, string Sha256);

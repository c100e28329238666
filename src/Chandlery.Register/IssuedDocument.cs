using System.Text.Json.Serialization;

namespace Chandlery.Register;

/// <summary>A document that was issued.</summary>
/// <param name="Name">File name.</param>
/// <param name="Sha256">Hash of its bytes.</param>
/// <param name="IsKept">Whether the register keeps the bytes too.</param>
public sealed record IssuedDocument(
    string Name,
    string Sha256,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)] bool IsKept = false
);

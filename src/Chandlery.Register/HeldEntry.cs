namespace Chandlery.Register;

/// <summary>An entry with the columns that are searched beside it.</summary>
/// <param name="Signed">What is signed.</param>
/// <param name="Batch">The batch that is searched.</param>
/// <param name="Subject">The subject that is searched.</param>
internal sealed record HeldEntry(SignedEntry Signed, string Batch, string Subject);

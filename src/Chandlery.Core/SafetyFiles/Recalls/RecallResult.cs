namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>Whom a recall reaches.</summary>
/// <param name="Query">What it began with.</param>
/// <param name="Batches">The batches, certain ones first.</param>
/// <param name="Unknown">What is not known and could hide others, a sentence each.</param>
public sealed record RecallResult(RecallQuery Query, IReadOnlyList<AffectedBatch> Batches, IReadOnlyList<string> Unknown);

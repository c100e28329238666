namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>A recall for programs.</summary>
/// <param name="By">What it began with: batch, lot, oil or substance.</param>
/// <param name="Text">Its code or name.</param>
/// <param name="Batches">The batches.</param>
/// <param name="Unknown">What is not known.</param>
public sealed record RecallReport(string By, string Text, IReadOnlyList<RecalledBatchReport> Batches, IReadOnlyList<string> Unknown);

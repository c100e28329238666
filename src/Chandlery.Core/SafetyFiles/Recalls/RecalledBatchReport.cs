namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>A batch of a recall for programs.</summary>
/// <param name="Batch">Batch code.</param>
/// <param name="Candle">Trade name.</param>
/// <param name="Why">Why it is reached.</param>
/// <param name="IsCertain">False where it only cannot be ruled out.</param>
/// <param name="Made">How many were made; null when not noted.</param>
/// <param name="Dispatched">How many went out.</param>
/// <param name="Left">How many must be left; null when not known.</param>
/// <param name="Receivers">Who has them.</param>
public sealed record RecalledBatchReport(
    string Batch,
    string Candle,
    string Why,
    bool IsCertain,
    int? Made,
    int Dispatched,
    int? Left,
    IReadOnlyList<ReceiverReport> Receivers
);

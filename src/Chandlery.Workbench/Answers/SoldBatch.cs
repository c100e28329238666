namespace Chandlery.Workbench.Answers;

/// <summary>A batch with what became of it.</summary>
/// <param name="Code">Batch code.</param>
/// <param name="Made">How many came of it; null when it is not declared.</param>
/// <param name="Dispatched">How many were sent out.</param>
internal sealed record SoldBatch(string Code, int? Made, int Dispatched);

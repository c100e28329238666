using Chandlery.Core.Classified;
using Chandlery.Core.Law;

namespace Chandlery.Core.Assessed.Reports;

internal sealed record WorkingReport
{
    public required string Formula { get; init; }
    public required IReadOnlyList<WorkingLine> Lines { get; init; }
    public required double? Value { get; init; }
    public required double Threshold { get; init; }
    public required string Unit { get; init; }
    public required string Clause { get; init; }
    public required string Sentence { get; init; }
    public required string Confidence { get; init; }

    public static WorkingReport Of(Working w, ProductKind kind) =>
        new WorkingReport
        {
            Formula = w.Formula,
            Lines = w.Lines,
            Value = w.Value,
            Threshold = w.Threshold,
            Unit = w.Unit,
            Clause = w.Clause,
            Sentence = kind.Say(w.Sentence),
            Confidence = w.Confidence,
        };
}

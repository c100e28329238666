using Chandlery.Core.Classified;

namespace Chandlery.Core.Assessed.Reports;

internal sealed record WorkingReport(
    string Formula,
    IReadOnlyList<WorkingLine> Lines,
    double Value,
    double Threshold,
    string Unit,
    string Clause,
    string Sentence,
    string Confidence
)
{
    public static WorkingReport Of(Working w) => new(w.Formula, w.Lines, w.Value, w.Threshold, w.Unit, w.Clause, w.Sentence, w.Confidence);
}

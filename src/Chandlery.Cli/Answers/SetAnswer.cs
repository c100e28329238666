using Chandlery.Core.Assessed;

namespace Chandlery.Cli.Answers;

/// <summary>A gift set under one edition of the law, for programs.</summary>
/// <param name="Set">Name of the declaration.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Edition">The edition of the law.</param>
/// <param name="Products">What is in it.</param>
/// <param name="Findings">What its maker must know.</param>
/// <param name="StopsSale">Whether something stops its sale.</param>
internal sealed record SetAnswer(
    string Set,
    string Name,
    string Edition,
    IReadOnlyList<SetProduct> Products,
    IReadOnlyList<SetFinding> Findings,
    bool StopsSale
)
{
    public static SetAnswer Of(SetSheet sheet) =>
        new(
            sheet.Set.Id,
            sheet.Set.Name,
            sheet.Edition.Id,
            [.. sheet.Lines.Select(l => new SetProduct(l.Count, l.Product.Candle.Id, l.Product.Candle.Name))],
            [.. sheet.Findings.Select(f => new SetFinding(f.Gravity == Gravity.Stop, f.What, f.Clause.Text))],
            sheet.StopsSale
        );
}

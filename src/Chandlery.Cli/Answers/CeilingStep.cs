using Chandlery.Core.Asked.Ceilings;

namespace Chandlery.Cli.Answers;

/// <summary>The highest load before something changes, for programs.</summary>
/// <param name="At">The load.</param>
/// <param name="Consequences">What changes just above it.</param>
internal sealed record CeilingStep(LoadFigures At, IReadOnlyList<CeilingConsequence> Consequences)
{
    public static CeilingStep Of(Ceiling ceiling, Varied varied) =>
        new(
            new LoadFigures(
                varied == Varied.Load ? ceiling.OfWax.Value : ceiling.Varied.Value,
                ceiling.OfWax.Value,
                ceiling.OfMelt.Value,
                ceiling.OfCandle.Value
            ),
            [.. ceiling.Consequences.Select(c => new CeilingConsequence(c.What, c.Begins, c.SetBy, c.Clause.Text))]
        );
}

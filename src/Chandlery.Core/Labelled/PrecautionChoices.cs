using System.Collections.Concurrent;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.Labelled;

/// <summary>Chooses an edition's precautionary statements, once for all mixtures with the same hazard statements.</summary>
/// <param name="rules">Offers and their ranks.</param>
internal sealed class PrecautionChoices(PrecautionRules rules)
{
    private readonly ConcurrentDictionary<string, PrecautionChoice> known = new(StringComparer.Ordinal);

    /// <summary>The choice for the hazard statements that call for precautions.</summary>
    public PrecautionChoice For(IReadOnlyList<StatementCode> called) =>
        known.GetOrAdd(string.Join(' ', called.Select(c => c.Text)), _ => PrecautionSelector.Select(rules, called));
}

using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>The classification of a candle.</summary>
/// <param name="Classes">Classes, in the order of the rules.</param>
/// <param name="Sensitisers">Sensitisers at or over their elicitation limits.</param>
/// <param name="Supplemental">The supplemental statement that names them when the candle is not classified for it; null when none is called for.</param>
/// <param name="UnknownToxicity">The statement on ingredients of unknown acute toxicity; null when none is called for.</param>
/// <param name="UnknownAquatic">The statement on ingredients of unknown hazard to waters; null when none is called for.</param>
public sealed record Classification(
    IReadOnlyList<ClassResult> Classes,
    IReadOnlyList<Sensitiser> Sensitisers,
    StatementCode? Supplemental,
    UnknownStatement? UnknownToxicity,
    UnknownStatement? UnknownAquatic
);

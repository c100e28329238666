namespace Chandlery.Core.Labelled;

/// <summary>Which precautionary statements a label has.</summary>
/// <param name="Chosen">Those that it has, in the order of their codes.</param>
/// <param name="LeftOff">What was offered and not chosen, with the reason.</param>
internal sealed record PrecautionChoice(IReadOnlyList<StatementChoice> Chosen, IReadOnlyList<LeftOffChoice> LeftOff);

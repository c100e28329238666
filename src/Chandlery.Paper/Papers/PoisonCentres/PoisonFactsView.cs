using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.PoisonCentres;

/// <summary>Facts for a notification to the poison centres.</summary>
/// <param name="Name">Trade name.</param>
/// <param name="Ufi">UFI.</param>
/// <param name="Maker">Who notifies.</param>
/// <param name="Places">Places of sale.</param>
/// <param name="Use">What it is used for.</param>
/// <param name="Colour">Its colour, as far as declared.</param>
/// <param name="Toxicology">What section 11 of the sheet says, in short.</param>
/// <param name="Package">How it is packed.</param>
/// <param name="Classes">Its classes.</param>
/// <param name="Label">Codes of its label elements.</param>
/// <param name="Ingredients">Its ingredients.</param>
/// <param name="Unknown">How much nobody declares; empty for nothing.</param>
/// <param name="Clause">Clause of the ranges.</param>
internal sealed record PoisonFactsView(
    string Name,
    string Ufi,
    MakerView Maker,
    string Places,
    string Use,
    string Colour,
    string Toxicology,
    string Package,
    string Classes,
    string Label,
    IReadOnlyList<IngredientView> Ingredients,
    string Unknown,
    string Clause
) : ITemplateView
{
    /// <inheritdoc/>
    public string Template => "poison-facts.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("name", Name),
            ("ufi", Ufi),
            ("maker", Maker),
            ("places", Places),
            ("use", Use),
            ("colour", Colour),
            ("toxicology", Toxicology),
            ("package", Package),
            ("classes", Classes),
            ("label", Label),
            ("ingredients", Ingredients),
            ("unknown", Unknown),
            ("clause", Clause),
        ];
}

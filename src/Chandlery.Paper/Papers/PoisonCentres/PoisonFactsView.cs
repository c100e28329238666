using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.PoisonCentres;

/// <summary>Facts for a notification to the poison centres.</summary>
/// <param name="Name">Trade name.</param>
/// <param name="Ufi">UFI.</param>
/// <param name="Maker">Who notifies.</param>
/// <param name="Places">Places of sale with the languages of each.</param>
/// <param name="Use">What it is used for.</param>
/// <param name="Category">Code of its product category, or that none is declared.</param>
/// <param name="Colour">Its colour, as far as declared.</param>
/// <param name="State">Solid or liquid.</param>
/// <param name="Acidity">Its pH, or why there is none.</param>
/// <param name="Packages">The packages in which it is sold.</param>
/// <param name="Classes">Its classes.</param>
/// <param name="Label">Codes of its label elements.</param>
/// <param name="Lacking">What the notification asks for and nobody has declared; empty for nothing.</param>
/// <param name="Ingredients">Its ingredients.</param>
/// <param name="Unknown">How much nobody declares; empty for nothing.</param>
/// <param name="Mixtures">Bought mixtures whose composition is not known in full.</param>
/// <param name="Generics">Words that could stand for ingredients.</param>
/// <param name="Group">Whether other candles may be told with it.</param>
/// <param name="GroupClause">Where that stands.</param>
/// <param name="Toxicology">What section 11 of the sheet says, a paragraph each.</param>
/// <param name="Clause">Clause of the ranges.</param>
/// <param name="Clauses">Where the law asks for the other points.</param>
internal sealed record PoisonFactsView(
    string Name,
    string Ufi,
    MakerView Maker,
    string Places,
    string Use,
    string Category,
    string Colour,
    string State,
    string Acidity,
    string Packages,
    string Classes,
    string Label,
    IReadOnlyList<string> Lacking,
    IReadOnlyList<IngredientView> Ingredients,
    string Unknown,
    IReadOnlyList<BoughtMixtureView> Mixtures,
    IReadOnlyList<GenericView> Generics,
    string Group,
    string GroupClause,
    IReadOnlyList<string> Toxicology,
    string Clause,
    PointClausesView Clauses
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
            ("category", Category),
            ("colour", Colour),
            ("state", State),
            ("acidity", Acidity),
            ("packages", Packages),
            ("classes", Classes),
            ("label", Label),
            ("lacking", Lacking),
            ("ingredients", Ingredients),
            ("unknown", Unknown),
            ("mixtures", Mixtures),
            ("generics", Generics),
            ("group", Group),
            ("group_clause", GroupClause),
            ("toxicology", Toxicology),
            ("clause", Clause),
            ("clauses", Clauses),
        ];
}

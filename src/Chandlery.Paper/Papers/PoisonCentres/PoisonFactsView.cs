using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.PoisonCentres;

/// <summary>Facts for a notification to the poison centres.</summary>
internal sealed record PoisonFactsView : ITemplateView
{
    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>UFI.</summary>
    public required string Ufi { get; init; }

    /// <summary>Who notifies.</summary>
    public required MakerView Maker { get; init; }

    /// <summary>Places of sale with the languages of each.</summary>
    public required string Places { get; init; }

    /// <summary>What it is used for.</summary>
    public required string Use { get; init; }

    /// <summary>Code of its product category, or that none is declared.</summary>
    public required string Category { get; init; }

    /// <summary>Its colour, as far as declared.</summary>
    public required string Colour { get; init; }

    /// <summary>Solid or liquid.</summary>
    public required string State { get; init; }

    /// <summary>Its pH, or why there is none.</summary>
    public required string Acidity { get; init; }

    /// <summary>The packages in which it is sold.</summary>
    public required string Packages { get; init; }

    /// <summary>Its classes.</summary>
    public required string Classes { get; init; }

    /// <summary>Codes of its label elements.</summary>
    public required string Label { get; init; }

    /// <summary>What the notification asks for and nobody has declared; empty for nothing.</summary>
    public required IReadOnlyList<string> Lacking { get; init; }

    /// <summary>Its ingredients.</summary>
    public required IReadOnlyList<IngredientView> Ingredients { get; init; }

    /// <summary>How much nobody declares; empty for nothing.</summary>
    public required string Unknown { get; init; }

    /// <summary>Bought mixtures whose composition is not known in full.</summary>
    public required IReadOnlyList<BoughtMixtureView> Mixtures { get; init; }

    /// <summary>Words that could stand for ingredients.</summary>
    public required IReadOnlyList<GenericView> Generics { get; init; }

    /// <summary>Whether other candles may be told with it.</summary>
    public required string Group { get; init; }

    /// <summary>Where that stands.</summary>
    public required string GroupClause { get; init; }

    /// <summary>What section 11 of the sheet says, a paragraph each.</summary>
    public required IReadOnlyList<string> Toxicology { get; init; }

    /// <summary>Clause of the ranges.</summary>
    public required string Clause { get; init; }

    /// <summary>Where the law asks for the other points.</summary>
    public required PointClausesView Clauses { get; init; }

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

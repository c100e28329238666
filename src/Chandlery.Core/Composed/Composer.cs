using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Composed;

/// <summary>Sums each substance over all oils, waxes and extras of a recipe.</summary>
public static class Composer
{
    /// <summary>What is in the finished candle.</summary>
    public static Composition Compose(Recipe recipe)
    {
        var lines = new List<Line>();
        double unknownLow = 0;
        double unknownHigh = 0;
        foreach (OilShare oil in recipe.Oils)
        {
            AddProduct(oil.Oil.Name, $"{oil.Oil.Document}, revised {oil.Oil.Revised:yyyy-MM-dd}", oil.Share, Table(oil.Oil));
        }

        foreach (WaxShare wax in recipe.Waxes)
        {
            AddProduct(wax.Wax.Name, "", wax.Share, wax.Wax.Ingredients);
        }

        foreach (ExtraShare extra in recipe.Extras)
        {
            AddProduct(extra.Extra.Name, "", extra.Share, extra.Extra.Ingredients);
        }

        var remarks = new List<string>();
        List<ComposedIngredient> ingredients = Sum(lines, remarks);
        return new Composition(recipe, ingredients, new MassPercent(unknownLow), new MassPercent(unknownHigh), remarks);

        void AddProduct(string product, string document, MassPercent share, IReadOnlyList<Ingredient> table)
        {
            (double low, double high) = AddTable(lines, product, document, share, table);
            unknownLow += share.Value * low / 100;
            unknownHigh += share.Value * high / 100;
        }
    }

    /// <summary>
    /// The oil's ingredients; an oil of which only its own classes are known counts as one ingredient with those classes,
    /// which is the weaker evidence.
    /// </summary>
    private static IReadOnlyList<Ingredient> Table(Oil oil) =>
        oil.IsKnownOnlyAsWhole
            ?
            [
                new Ingredient
                {
                    Identity = new SubstanceIdentity(oil.Name, null, null),
                    Share = DeclaredRange.Exactly(100),
                    Claims = oil.OwnClaims,
                    SpecificLimits = [],
                    AcuteM = null,
                    ChronicM = null,
                    Toxicity = [],
                    Constituents = [],
                    ListedSeparately = false,
                    Place = oil.Place,
                },
            ]
            : oil.Ingredients;

    /// <summary>Adds a product's lines; returns the undeclared rest of the product, percent of it.</summary>
    private static (double Low, double High) AddTable(
        List<Line> lines,
        string product,
        string document,
        MassPercent share,
        IReadOnlyList<Ingredient> table
    )
    {
        double lows = table.Sum(i => i.Share.Low.Value);
        double highs = 0;
        foreach (Ingredient ingredient in table)
        {
            double low = ingredient.Share.Low.Value;
            double high = HighEnd(ingredient, lows);
            highs += high;
            double takenLow = 0;
            foreach (Ingredient constituent in ingredient.Constituents)
            {
                double constituentLow = constituent.Share.Low.Value * low / 100;
                double constituentHigh = HighEnd(constituent, ingredient.Constituents.Sum(c => c.Share.Low.Value)) * high / 100;
                takenLow += constituent.Share.Low.Value;
                if (!constituent.ListedSeparately)
                {
                    Add(
                        constituent,
                        $"{constituent.Share.Printed} of {ingredient.Identity.Name}",
                        constituentLow,
                        constituentHigh,
                        constituentHigh
                    );
                }
            }

            // What the constituents leave is bounded by their low ends above and their high ends below.
            double takenHigh = Math.Min(100, ingredient.Constituents.Sum(c => c.Share.High.Value));
            Add(ingredient, ingredient.Share.Printed, low * (100 - takenHigh) / 100, high * (100 - takenLow) / 100, high);
        }

        return (Math.Max(0, 100 - Math.Min(100, highs)), Math.Max(0, 100 - lows));

        void Add(Ingredient ingredient, string printed, double low, double high, double whole)
        {
            var part = new Contribution(
                product,
                document,
                share,
                printed,
                new MassPercent(share.Value * low / 100),
                new MassPercent(share.Value * high / 100),
                ingredient
            );
            lines.Add(new Line(part, share.Value * whole / 100));
        }
    }

    // A line without an upper end can be no more than what the low ends of the others leave.
    private static double HighEnd(Ingredient ingredient, double lows) =>
        ingredient.Share.OpenAbove
            ? Math.Max(ingredient.Share.Low.Value, 100 - (lows - ingredient.Share.Low.Value))
            : ingredient.Share.High.Value;

    private static List<ComposedIngredient> Sum(List<Line> lines, List<string> remarks)
    {
        var sums = new List<List<Line>>();
        var byCas = new Dictionary<string, List<Line>>();
        var byEc = new Dictionary<string, List<Line>>();
        var byName = new Dictionary<string, List<Line>>();

        // Lines with a CAS number open the groups, so that lines with only an EC number or a name can join them
        // whatever the order of the sheets.
        foreach (Line line in lines.OrderBy(l => l.Rank))
        {
            SubstanceIdentity identity = line.Part.Ingredient.Identity;
            string name = identity.PlainName;
            List<Line>? group = Join(identity, name, byCas, byEc, byName);
            if (group is null)
            {
                group = [];
                sums.Add(group);
                Remark(identity, name, byName, remarks);
            }
            else if (group[0].Part.Ingredient.Identity.PlainName != name)
            {
                AddOnce(
                    remarks,
                    $"'{identity.Name}' and '{group[0].Part.Ingredient.Identity.Name}' have the same number {identity.Cas?.Text ?? identity.Ec?.Text} and are counted as one substance: check that they are."
                );
            }

            group.Add(line);
            if (identity.Cas is not null)
            {
                byCas[identity.Cas.Text] = group;
            }

            if (identity.Ec is not null)
            {
                byEc.TryAdd(identity.Ec.Text, group);
            }

            byName.TryAdd(name, group);
        }

        return [.. sums.Select(Merge).OrderByDescending(i => i.High.Value).ThenBy(i => i.Identity.Name, StringComparer.Ordinal)];
    }

    // By CAS number, then EC number, then name; a name alone never joins two lines whose numbers differ.
    private static List<Line>? Join(
        SubstanceIdentity identity,
        string name,
        Dictionary<string, List<Line>> byCas,
        Dictionary<string, List<Line>> byEc,
        Dictionary<string, List<Line>> byName
    )
    {
        if (identity.Cas is { } cas)
        {
            return byCas.GetValueOrDefault(cas.Text);
        }

        if (identity.Ec is { } ec && byEc.TryGetValue(ec.Text, out List<Line>? sameEc))
        {
            return sameEc;
        }

        List<Line>? namesake = byName.GetValueOrDefault(name);
        bool contradicts = identity.Ec is not null && namesake?.Any(l => l.Part.Ingredient.Identity.Ec is not null) == true;
        return contradicts ? null : namesake;
    }

    private static void Remark(SubstanceIdentity identity, string name, Dictionary<string, List<Line>> byName, List<string> remarks)
    {
        if (byName.TryGetValue(name, out List<Line>? namesake))
        {
            SubstanceIdentity other = namesake[0].Part.Ingredient.Identity;
            AddOnce(
                remarks,
                $"'{identity.Name}' stands with two numbers, {identity.Cas?.Text ?? identity.Ec?.Text ?? "none"} and {other.Cas?.Text ?? other.Ec?.Text ?? "none"}; they are counted as two substances: check which is right."
            );
        }
    }

    private static void AddOnce(List<string> remarks, string remark)
    {
        if (!remarks.Contains(remark))
        {
            remarks.Add(remark);
        }
    }

    private static ComposedIngredient Merge(List<Line> lines)
    {
        SubstanceIdentity first = lines[0].Part.Ingredient.Identity;
        SubstanceIdentity identity =
            lines.Count == 1
                ? first
                : new SubstanceIdentity(
                    first.Name,
                    first.Cas ?? lines.Select(l => l.Part.Ingredient.Identity.Cas).FirstOrDefault(c => c is not null),
                    first.Ec ?? lines.Select(l => l.Part.Ingredient.Identity.Ec).FirstOrDefault(e => e is not null)
                );
        return new ComposedIngredient(
            identity,
            new MassPercent(lines.Sum(l => l.Part.Low.Value)),
            new MassPercent(lines.Sum(l => l.Part.High.Value)),
            new MassPercent(lines.Sum(l => l.WholeHigh)),
            [.. lines.Select(l => l.Part)]
        );
    }

    private sealed record Line(Contribution Part, double WholeHigh)
    {
        public int Rank =>
            Part.Ingredient.Identity.Cas is not null ? 0
            : Part.Ingredient.Identity.Ec is not null ? 1
            : 2;
    }
}

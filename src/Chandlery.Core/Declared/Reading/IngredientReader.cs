using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads ingredient tables, the same for oils, waxes and extras.</summary>
internal sealed class IngredientReader(HazardVocabulary vocabulary)
{
    /// <summary>The ingredient table.</summary>
    public IReadOnlyList<Ingredient> ReadTable(Fields owner, bool required)
    {
        string key = IngredientShape.Table.Key;
        List<Ingredient> table = [.. owner.Groups(key).Select(group => Read(group, constituent: false))];
        if (required && table.Count == 0 && !owner.Has(key))
        {
            owner.Lacks(IngredientShape.Table, "List what the sheet's section 3 lists; an empty list is '[]'.");
        }

        CheckSum(owner, key, table);
        return table;
    }

    /// <summary>Reads <c>classes</c>: a list, the words "not classified" (empty), or nothing at all (null: unknown).</summary>
    public IReadOnlyList<HazardClaim>? ReadClaims(Fields fields)
    {
        string key = IngredientShape.Classes.Key;
        YamlValue? value = fields.Take(key);
        switch (value)
        {
            case null:
                return null;
            case YamlScalar { Text: IngredientShape.NotClassified }:
                return [];
            case YamlList list when list.Items.Count > 0:
                var claims = new List<HazardClaim>();
                foreach (YamlValue item in list.Items)
                {
                    if (item is not YamlScalar scalar)
                    {
                        fields.Problems.Add(item.Place, "A class must be a text, such as 'Skin Sens. 1B, H317'.");
                    }
                    else if (vocabulary.Parse(scalar.Text) is var claim && claim.Success)
                    {
                        claims.Add(claim.Value);
                    }
                    else
                    {
                        fields.Problems.Add(item.Place, claim.Reason);
                    }
                }

                return claims;
            default:
                fields.Problems.Add(
                    value.Place,
                    $"'{key}' must be a list of classes.",
                    $"Write '{key}: [\"Skin Sens. 1B, H317\"]', or '{key}: {IngredientShape.NotClassified}' where the sheet says so; leave it out when the sheet is silent."
                );
                return null;
        }
    }

    private Ingredient Read(Fields fields, bool constituent)
    {
        string name = fields.Text(IngredientShape.Name);
        CasNumber? cas = ReadRegistryNumber(fields, IngredientShape.Cas, CasNumber.Parse);
        EcNumber? ec = ReadRegistryNumber(fields, IngredientShape.Ec, EcNumber.Parse);
        DeclaredRange share = ReadShare(fields);
        IReadOnlyList<HazardClaim>? claims = ReadClaims(fields);
        List<SpecificLimit> limits = [.. ReadLimits(fields)];
        (double? acuteM, double? chronicM) = ReadM(fields);
        List<ToxicityEstimate> toxicity = [.. ReadToxicity(fields)];
        IReadOnlyList<string> notesMet = fields.Texts(IngredientShape.NotesMet);
        IReadOnlyList<Ingredient> constituents = [];
        bool listedSeparately = false;
        if (constituent)
        {
            listedSeparately = fields.OptionalFlag(IngredientShape.ListedSeparately) ?? false;
        }
        else
        {
            constituents = [.. fields.Groups(IngredientShape.Constituents).Select(group => Read(group, constituent: true))];
            CheckSum(fields, IngredientShape.Constituents.Key, constituents);
        }

        fields.Done();
        return new Ingredient
        {
            Identity = new SubstanceIdentity(name, cas, ec),
            Share = share,
            Claims = claims,
            SpecificLimits = limits,
            AcuteM = acuteM,
            ChronicM = chronicM,
            Toxicity = toxicity,
            Constituents = constituents,
            ListedSeparately = listedSeparately,
            NotesMet = notesMet,
            Place = fields.Place,
        };
    }

    private static T? ReadRegistryNumber<T>(Fields fields, TextField field, Func<string, Parsed<T>> parse)
        where T : class
    {
        string? text = fields.OptionalText(field);
        if (text is null)
        {
            return null;
        }

        Parsed<T> number = parse(text);
        if (!number.Success)
        {
            fields.Problems.Add(fields.PlaceOf(field), number.Reason, "Copy it from the sheet again, or leave the field out.");
        }

        return number.OrNull();
    }

    private static DeclaredRange ReadShare(Fields fields)
    {
        string text = fields.Text(IngredientShape.Share);
        Parsed<DeclaredRange> share = DeclaredRange.Parse(text);
        if (!share.Success && fields.Has(IngredientShape.Share))
        {
            fields.Problems.Add(fields.PlaceOf(IngredientShape.Share), share.Reason);
        }

        return share.OrNull() ?? DeclaredRange.Exactly(1);
    }

    public IEnumerable<SpecificLimit> ReadLimits(Fields fields)
    {
        foreach (YamlValue item in fields.List(IngredientShape.Limits.Key))
        {
            Parsed<SpecificLimit> limit = SpecificLimitText.Parse((item as YamlScalar)?.Text ?? "", vocabulary);
            if (limit.Success)
            {
                yield return limit.Value;
            }
            else
            {
                fields.Problems.Add(item.Place, limit.Reason);
            }
        }
    }

    // One M alone is used for both sums: the stricter reading of a sheet that does not say which it means.
    public static (double? Acute, double? Chronic) ReadM(Fields fields)
    {
        YamlValue? value = fields.Take(IngredientShape.M);
        switch (value)
        {
            case null:
                return (null, null);
            case YamlScalar:
                double both = fields.ReadNumber(value, "'m'", IngredientShape.BothM);
                return (both, both);
            case YamlMap map:
                var group = new Fields(map, fields.Problems);
                double? acute = group.OptionalNumber(IngredientShape.AcuteM);
                double? chronic = group.OptionalNumber(IngredientShape.ChronicM);
                group.Done();
                return (acute, chronic);
            default:
                fields.Problems.Add(value.Place, "'m' must be a number, or a group with 'acute' and 'chronic'.");
                return (null, null);
        }
    }

    public static IEnumerable<ToxicityEstimate> ReadToxicity(Fields fields)
    {
        Fields? group = fields.OptionalGroup(IngredientShape.Ate);
        if (group is null)
        {
            yield break;
        }

        (NumberField Field, ExposureRoute Route)[] routes =
        [
            (IngredientShape.OralAte, ExposureRoute.Oral),
            (IngredientShape.DermalAte, ExposureRoute.Dermal),
            (IngredientShape.GasAte, ExposureRoute.InhalationGas),
            (IngredientShape.VapourAte, ExposureRoute.InhalationVapour),
            (IngredientShape.DustAte, ExposureRoute.InhalationDust),
        ];
        foreach ((NumberField field, ExposureRoute route) in routes)
        {
            if (group.OptionalNumber(field) is { } value)
            {
                yield return new ToxicityEstimate(route, value);
            }
        }

        group.Done();
    }

    private static void CheckSum(Fields owner, string key, IReadOnlyList<Ingredient> table)
    {
        double lows = table.Where(i => !i.ListedSeparately).Sum(i => i.Share.Low.Value);
        if (lows > 100 * (1 + MassPercent.RelativeTolerance))
        {
            owner.Problems.Add(
                owner.PlaceOf(key),
                $"The low ends of '{key}' add up to {Figures.Plain(lows)} %, more than the whole.",
                "Check the shares against the sheet; a substance inside a natural oil belongs under that oil's 'constituents'."
            );
        }
    }
}

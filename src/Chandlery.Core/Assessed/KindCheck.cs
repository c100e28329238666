using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;
using Chandlery.Yaml;

namespace Chandlery.Core.Assessed;

/// <summary>Finds a product's kind, and whether what is declared of it is what the kind asks for.</summary>
internal static class KindCheck
{
    /// <summary>The kind; null with a problem when there is none of that name, or when a part is missing or too many.</summary>
    public static ProductKind? Of(Candle candle, Shelf<ProductKind> kinds, Problems problems)
    {
        string id = candle.Kind?.Id ?? ProductKind.Usual;
        if (kinds.Find(id) is not { } kind)
        {
            string near = Suggestion.Nearest(id, kinds.Codes) is { } guess ? $"Did you mean '{guess}'? " : "";
            problems.Add(
                candle.Kind?.Place ?? candle.Place,
                $"There is no kind of product named '{id}'.",
                $"{near}Known: {string.Join(", ", kinds.Codes)}."
            );
            return null;
        }

        var own = new Problems();
        foreach (KindPart part in (KindPart[])[KindPart.Vessel, KindPart.Size, KindPart.Wicks])
        {
            bool has = Has(candle, part);
            if (kind.Needs.Contains(part) && !has)
            {
                own.Add(candle.Place, $"A {kind.Name} needs '{Field(part)}'.", Remedy(part));
            }
            else if (has && !kind.Takes(part))
            {
                own.Add(
                    candle.Place,
                    $"A {kind.Name} has no '{Field(part)}'.",
                    $"Leave '{Field(part)}' out, or write another 'kind'. Kinds: {string.Join(", ", kinds.Codes)}."
                );
            }
        }

        CheckPlace(candle, kind, own);
        CheckVessel(candle, kind, own);
        CheckQuantity(candle, kind, own);
        problems.AddRange(own.Found);
        return own.None ? kind : null;
    }

    /// <summary>As what it is checked against limits: the category is the product's own, or its kind's.</summary>
    public static LimitedAs LimitedAs(Candle candle, ProductKind kind) =>
        new(kind.Name, kind.Burns, candle.IfraCategory ?? kind.IfraCategory);

    /// <summary>Whether its wax or base is of the sort that the kind takes; another is a problem.</summary>
    public static void CheckBase(Candle candle, ProductKind kind, Wax wax, Problems problems)
    {
        if (wax.IsBase != kind.Takes(KindPart.Base))
        {
            problems.Add(
                candle.Wax.Place,
                wax.IsBase
                    ? $"{wax.Name} is a liquid base; a {kind.Name} needs a wax."
                    : $"{wax.Name} is a wax; a {kind.Name} needs a liquid base.",
                wax.IsBase ? "Name a file with 'declares: wax' in 'wax'." : "Name a file with 'declares: base' in 'base'."
            );
        }
    }

    private static void CheckPlace(Candle candle, ProductKind kind, Problems own)
    {
        if (!kind.UsedIn.Contains(candle.Use))
        {
            string use = kind.UsedIn[0].ToString().ToLowerInvariant();
            own.Add(candle.Place, $"A {kind.Name} is for {use} use alone.", $"Write 'use: {use}'.");
        }
    }

    private static void CheckVessel(Candle candle, ProductKind kind, Problems own)
    {
        if (kind.Takes(KindPart.Vessel) && kind.Takes(KindPart.Size) && (candle.Vessel is null) == (candle.Size is null))
        {
            own.Add(
                candle.Place,
                $"A {kind.Name} needs either 'vessel' or 'size'.",
                "Name the vessel that it is poured into, or give the size of what stands by itself."
            );
        }
    }

    private static void CheckQuantity(Candle candle, ProductKind kind, Problems own)
    {
        bool isLiquid = kind.State == PhysicalState.Liquid;
        if (isLiquid != candle.NetVolume is not null)
        {
            own.Add(
                candle.Place,
                isLiquid ? $"The quantity of a {kind.Name} is a volume." : $"The quantity of a {kind.Name} is a mass.",
                isLiquid
                    ? "Write 'netMillilitres: 100' and the density under 'liquid', in the stead of 'netGrams'."
                    : "Write 'netGrams: 180' in the stead of 'netMillilitres'."
            );
        }

        if (!isLiquid && candle.Liquid is not null)
        {
            own.Add(candle.Place, $"A {kind.Name} is no liquid.", "Leave 'liquid' out, or write another 'kind'.");
        }
    }

    private static bool Has(Candle candle, KindPart part) =>
        part switch
        {
            KindPart.Vessel => candle.Vessel is not null,
            KindPart.Size => candle.Size is not null,
            _ => candle.Wicks.Count > 0,
        };

    private static string Field(KindPart part) => part.ToString().ToLowerInvariant();

    private static string Remedy(KindPart part) =>
        part switch
        {
            KindPart.Vessel => "Write 'vessel:' and the file name of a vessel without .yaml.",
            KindPart.Size => "Write 'size: { diameterMm: 70, heightMm: 120 }'.",
            _ => "Write 'wicks: { count: 1, trimToMm: 5 }'.",
        };
}

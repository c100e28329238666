using System.Globalization;
using Chandlery.Core.Declared;
using Chandlery.Tests.Support;
using Chandlery.Yaml;
using CsCheck;

namespace Chandlery.Tests.Law;

/// <summary>Products of random substances in each form that asks the law something of its own.</summary>
internal static class RandomProduct
{
    private static readonly string[] Classes =
    [
        "Skin Sens. 1A, H317",
        "Skin Sens. 1B, H317",
        "Resp. Sens. 1, H334",
        "Skin Irrit. 2, H315",
        "Skin Corr. 1B, H314",
        "Eye Dam. 1, H318",
        "Acute Tox. 4, H302",
        "Acute Tox. 3, H331",
        "Aquatic Acute 1, H400",
        "Aquatic Chronic 1, H410",
        "Aquatic Chronic 3, H412",
        "Repr. 2, H361d",
        "STOT RE 2, H373",
        "ED HH 1, EUH380",
        "PBT, EUH440",
        "Asp. Tox. 1, H304",
        "Flam. Liq. 2, H225",
        "Flam. Liq. 3, H226",
    ];

    /// <summary>A solid; one with an extra and a second pour without scent; one poured twice of the same melt; a liquid.</summary>
    public static readonly string[] Forms =
    [
        "jar",
        "jar with an extra and a plain second pour",
        "jar of two scented pours",
        "reed diffuser",
    ];

    private static readonly Gen<string> Ingredient = Gen.Select(
        Gen.Int[0, 99],
        Gen.Double[0.05, 20],
        Gen.Int[0, Classes.Length - 1].Array[0, 3],
        (id, percent, classes) => $"  - {{ name: s{id}, share: {Plain(percent)}, m: 10, classes: {List(classes)} }}"
    );

    // On both sides of every bound of flash point, boiling point and viscosity; each may be lacking, which is never harmless.
    private static readonly Gen<string> Measured = Gen.Select(
        Gen.Int[-10, 90],
        Gen.Int[0, 2],
        Gen.Int[25, 170],
        Gen.Double[1, 40],
        Gen.Int[0, 3],
        Gen.Int[0, 4],
        (flash, flashKind, boiling, viscosity, lacking, vapour) =>
            (flashKind == 0 ? "" : $", flashPoint: {{ {(flashKind == 1 ? "celsius" : "aboveCelsius")}: {flash}, method: EN ISO 3679 }}")
            + (lacking == 1 ? "" : $", boilingCelsius: {boiling}")
            + (lacking == 2 ? "" : $", viscosityMm2PerSecond: {Plain(viscosity)}")
            + (lacking == 3 ? ", sustainedCombustion: negative" : "")
            + vapour switch
            {
                0 => ", formsFlammableVapour: yes",
                1 => ", formsFlammableVapour: no",
                2 => ", classes: [\"Flam. Liq. 3, H226\"]",
                3 => ", classes: not classified",
                _ => "",
            }
    );

    /// <summary>Random oils, an ingredient of what is neither oil nor wax, and what was measured of a liquid.</summary>
    public static readonly Gen<RandomBlend> Blend = Gen.Select(
        Gen.Double[0.5, 12],
        Ingredient.Array[1, 5],
        Ingredient.Array[1, 4],
        Ingredient,
        Measured,
        Gen.Bool,
        (load, first, second, other, measured, old) => new RandomBlend(load, first, second, other, measured, old)
    );

    /// <summary>The declarations of a blend in a form.</summary>
    public static Catalogue Read(RandomBlend blend, string form)
    {
        var problems = new Problems();
        Catalogue catalogue = TestLaw.Read(
            problems,
            ("w.yaml", Carrier(blend, form)),
            ("e.yaml", $"declares: extra\nname: E\nsupplier: N\npurpose: dye\ningredients:\n{blend.Other}"),
            ("o.yaml", Oil("O", blend.First)),
            ("p.yaml", Oil("P", blend.Second)),
            ("v.yaml", "declares: vessel\nname: V\nmaterial: glass\nbrimfulMl: 300"),
            (
                "m.yaml",
                "declares: maker\nname: M\naddress: [A]\ntelephone: '+353 1 555 0100'\nemergencyTelephone: '+353 1 555 0101'\nweb: https://m.example\nvat: { country: IE, number: '1234567FA' }"
            ),
            (
                "candle.yaml",
                $"declares: candle\nname: C\nuse: indoor\nvessel: v\n{Body(blend, form)}\noils: [ {{ oil: o, share: 60 }}, {{ oil: p, share: 40 }} ]\nformulationNumber: 1\nsoldIn: [IE]{(blend.IsOld ? "\nonMarketSince: 2024-01-01" : "")}"
            )
        );
        Assert.Empty(problems.Found);
        return catalogue;
    }

    private static string Carrier(RandomBlend blend, string form) =>
        form == "reed diffuser"
            ? $"declares: base\nname: B\nsupplier: N\ningredients:\n  - {{ name: carrier, share: 75, classes: not classified }}\n{blend.Other}"
            : "declares: wax\nname: W\nsupplier: N\ningredients: [ { name: wax, share: 100, classes: not classified } ]";

    private static string Body(RandomBlend blend, string form)
    {
        string load = Plain(blend.Load);
        string jar = $"netGrams: 200\nwax: w\nload: {{ percent: {load}, of: wax }}\nwicks: {{ count: 1, trimToMm: 5 }}";
        return form switch
        {
            "jar" => jar,
            "jar with an extra and a plain second pour" =>
                $"{jar}\nextras: [ {{ extra: e, percentOfWax: 2 }} ]\ntopUp: {{ scented: no, percentOfCandle: 15 }}",
            "jar of two scented pours" => $"{jar}\ntopUp: {{ scented: yes, percentOfCandle: 15 }}",
            "reed diffuser" =>
                $"kind: reed-diffuser\nifraCategory: 10A\nnetMillilitres: 100\nbase: w\nload: {{ percent: {load}, of: product }}\nliquid: {{ densityGramsPerMl: 0.9, document: report 1{blend.Measured} }}",
            _ => throw new ArgumentOutOfRangeException(nameof(form), form, "There is no such form."),
        };
    }

    private static string Plain(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static string List(int[] classes) =>
        classes.Length == 0
            ? "not classified"
            : "[" + string.Join(", ", classes.Distinct().DistinctBy(c => Classes[c][..8]).Select(c => $"\"{Classes[c]}\"")) + "]";

    private static string Oil(string name, string[] lines) =>
        $"declares: oil\nname: {name}\nsupplier: N\ndocument: D\nrevised: 2026-01-01\ningredients:\n{string.Join('\n', lines.DistinctBy(l => l.Split(',')[0]))}";
}

using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of an ingredient, the same for oils, waxes and extras.</summary>
internal static class IngredientShape
{
    /// <summary>What a reviewer writes for "the sheet says that this is not classified".</summary>
    public const string NotClassified = "not classified";

    public static readonly TextField Name = new("name", "Name as the sheet prints it.", "Linalool") { Needed = true };

    public static readonly TextField Cas = new("cas", "CAS number; its check digit is verified.", "'78-70-6'")
    {
        Pattern = "^[1-9][0-9]{1,6}-[0-9]{2}-[0-9]$",
    };

    public static readonly TextField Ec = new("ec", "EC number; its check digit is verified.", "'201-134-4'")
    {
        Pattern = "^[0-9]{3}-[0-9]{3}-[0-9]$",
    };

    public static readonly TextField Share = new(
        "share",
        "Share as the sheet prints it: '2.5', '10 - <25 %', '<= 1', '>=0.1-<1'.",
        "'10 - <25 %'"
    )
    {
        Needed = true,
        AsNumber = new NumberField("", "Percent.", "2.5", 0, 100),
    };

    public static readonly EitherField Classes = new(
        "classes",
        "Hazard classes as declared, or the words 'not classified' where the sheet says so. Leave it out when the sheet is silent: that is unknown, not harmless.",
        [
            new ChoiceField("", "", [NotClassified]),
            new TextsField("", "Class, category and statement, such as 'Skin Sens. 1B, H317'.") { NotEmpty = true },
        ]
    );

    public static readonly TextsField Limits = new(
        "limits",
        "Specific concentration limits as declared, such as 'Skin Sens. 1A, H317: C >= 0.01 %'."
    );

    public static readonly NumberField AcuteM = new("acute", "For Aquatic Acute 1.", "10", 0, HighestM);

    public static readonly NumberField ChronicM = new("chronic", "For Aquatic Chronic 1.", "10", 0, HighestM);

    public static readonly NumberField BothM = new("m", "Both.", "10", 0, HighestM);

    public static readonly EitherField M = new(
        "m",
        "M-factor: one number for both sums, or acute and chronic apart.",
        [BothM, new GroupField("", "", new Shape("mFactors", "M-factors of the two sums.", [AcuteM, ChronicM]))]
    );

    public static readonly NumberField OralAte = Estimate("oralMgPerKg", "mg per kg body weight");

    public static readonly NumberField DermalAte = Estimate("dermalMgPerKg", "mg per kg body weight");

    public static readonly NumberField GasAte = Estimate("gasPpm", "ppm by volume");

    public static readonly NumberField VapourAte = Estimate("vapourMgPerLitre", "mg per litre, four hours");

    public static readonly NumberField DustAte = Estimate("dustMgPerLitre", "mg per litre, four hours");

    public static readonly GroupField Ate = new(
        "ate",
        "Acute toxicity estimates, LD50 or LC50.",
        new Shape("toxicity", "Acute toxicity estimates, LD50 or LC50.", [OralAte, DermalAte, GasAte, VapourAte, DustAte])
    );

    public static readonly TextsField NotesMet = new(
        "notesMet",
        "Notes of the table of harmonised classes whose condition the supplier's document shows to hold, such as 'N' for a petrolatum whose refining history is known; the class that the note speaks of is then left off."
    );

    public static readonly FlagField ListedSeparately = new(
        "listedSeparately",
        "The same table has this substance as a line of its own, which already counts this amount."
    );

    public static readonly GroupsField Constituents = new(
        "constituents",
        "What a natural complex substance is itself made of; shares are of this ingredient.",
        new Shape("constituent", "A part of an ingredient.", [Name, Cas, Ec, Share, Classes, Limits, M, Ate, NotesMet, ListedSeparately])
    );

    public static readonly Shape Ingredient = new(
        "ingredient",
        "A line of the ingredient table.",
        [Name, Cas, Ec, Share, Classes, Limits, M, Ate, NotesMet, Constituents]
    );

    public static readonly GroupsField Table = new("ingredients", "The sheet's ingredient table (section 3).", Ingredient);

    private const double HighestM = 1_000_000;

    private static NumberField Estimate(string key, string unit) => new(key, unit, "2000", 0, 1_000_000);
}

using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>A reference to another declaration, with its place for error messages.</summary>
/// <param name="Id">The other declaration's file name without its ending.</param>
/// <param name="Place">Where the reference stands.</param>
public sealed record Reference(string Id, TextPlace Place);

/// <summary>Something that is declared in a file of its own.</summary>
public interface IDeclaration
{
    /// <summary>File name without its ending; unique within a kind.</summary>
    string Id { get; }

    /// <summary>Start of the declaration.</summary>
    TextPlace Place { get; }
}

/// <summary>A flash point as a sheet gives it.</summary>
/// <param name="Temperature">The temperature; a lower bound when <paramref name="IsLowerBound"/>.</param>
/// <param name="IsLowerBound">True for "above 93 °C".</param>
/// <param name="Method">Such as "closed cup"; null when the sheet does not say.</param>
public sealed record FlashPoint(Celsius Temperature, bool IsLowerBound, string? Method)
{
    /// <summary>Such as "&gt; 93 °C".</summary>
    public override string ToString() => $"{(IsLowerBound ? "> " : "")}{Temperature}";
}

/// <summary>What an IFRA certificate allows in one product category.</summary>
/// <param name="Highest">Highest share of the finished product; 100 % when not restricted; 0 % when not permitted.</param>
public sealed record IfraLimit(MassPercent Highest);

/// <summary>An IFRA certificate of conformity.</summary>
/// <param name="Amendment">Number of the amendment it is made out for.</param>
/// <param name="Date">Its date.</param>
/// <param name="Limits">Limit per category ("1" to "12", with letters); category 12 is the candle's.</param>
public sealed record IfraCertificate(int Amendment, DateOnly Date, IReadOnlyDictionary<string, IfraLimit> Limits);

/// <summary>Who compared a drafted declaration with the supplier's document, and when.</summary>
/// <param name="By">The reviewer's name.</param>
/// <param name="On">The day.</param>
public sealed record Review(string By, DateOnly On);

/// <summary>That a program drafted a declaration from PDFs.</summary>
/// <param name="Files">The PDFs' names.</param>
/// <param name="Review">Who reviewed it; null as long as nobody has, and then no label is printed with it.</param>
/// <param name="Place">Where the review stands.</param>
public sealed record DraftOrigin(IReadOnlyList<string> Files, Review? Review, TextPlace Place);

/// <summary>A fragrance oil as bought.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Supplier">Who sells it.</param>
/// <param name="Document">Reference of the sheet that the figures come from.</param>
/// <param name="Revised">Revision date of that sheet.</param>
/// <param name="Ingredients">Its ingredient table.</param>
/// <param name="OwnClaims">The classes that the sheet gives the oil itself; null when it says nothing.</param>
/// <param name="FlashPoint">Flash point, when declared.</param>
/// <param name="Density">Density, when declared.</param>
/// <param name="DropMass">Mass of one drop, when measured.</param>
/// <param name="HighestLoad">The maker's highest load, when declared.</param>
/// <param name="Ifra">IFRA certificate, when there is one.</param>
/// <param name="NotDeclared">What the supplier says is missing from the sheet, in the reviewer's words.</param>
/// <param name="Draft">Where it was drafted from; null for a declaration that a person wrote.</param>
public sealed record Oil(
    string Id,
    TextPlace Place,
    string Name,
    string Supplier,
    string Document,
    DateOnly Revised,
    IReadOnlyList<Ingredient> Ingredients,
    IReadOnlyList<HazardClaim>? OwnClaims,
    FlashPoint? FlashPoint,
    GramsPerMillilitre? Density,
    Grams? DropMass,
    FragranceLoad? HighestLoad,
    IfraCertificate? Ifra,
    IReadOnlyList<string> NotDeclared,
    DraftOrigin? Draft = null
) : IDeclaration
{
    /// <summary>True for a draft that nobody has compared with its document yet.</summary>
    public bool IsUnreviewed => Draft is { Review: null };

    /// <summary>True when the sheet gives classes of the oil but no ingredients.</summary>
    public bool IsKnownOnlyAsWhole => Ingredients.Count == 0 && OwnClaims is not null;
}

/// <summary>A part of a wax blend.</summary>
/// <param name="Wax">Which wax.</param>
/// <param name="Share">Its share of the blend.</param>
public sealed record WaxPart(Reference Wax, MassPercent Share);

/// <summary>A wax, or a blend of waxes.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Supplier">Who sells it; the maker for an own blend.</param>
/// <param name="Ingredients">Its ingredient table; empty for a blend.</param>
/// <param name="Blend">The waxes it is blended of; empty for a plain wax.</param>
/// <param name="HighestLoad">Highest fragrance load that it holds, when declared.</param>
/// <param name="SolidDensity">Density of the cold wax, when declared.</param>
/// <param name="LiquidDensity">Density of the molten wax, when declared.</param>
/// <param name="MeltingPoint">Melting point, when declared.</param>
public sealed record Wax(
    string Id,
    TextPlace Place,
    string Name,
    string Supplier,
    IReadOnlyList<Ingredient> Ingredients,
    IReadOnlyList<WaxPart> Blend,
    FragranceLoad? HighestLoad,
    GramsPerMillilitre? SolidDensity,
    GramsPerMillilitre? LiquidDensity,
    Celsius? MeltingPoint = null
) : IDeclaration;

/// <summary>A dye, UV absorber or other additive.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Supplier">Who sells it.</param>
/// <param name="Purpose">What it is for, in the maker's words.</param>
/// <param name="Ingredients">Its ingredient table.</param>
/// <param name="Highest">Highest share of the wax, when the supplier gives one.</param>
public sealed record Extra(
    string Id,
    TextPlace Place,
    string Name,
    string Supplier,
    string Purpose,
    IReadOnlyList<Ingredient> Ingredients,
    MassPercent? Highest
) : IDeclaration;

/// <summary>Who makes the candle and answers for the label.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Name on the label.</param>
/// <param name="AddressLines">Postal address, a line each.</param>
/// <param name="Telephone">Telephone number.</param>
/// <param name="Email">Electronic address; either this or <paramref name="Web"/> is given.</param>
/// <param name="Web">Web address.</param>
/// <param name="VatCountry">Country code of the VAT number, for the UFI.</param>
/// <param name="EmergencyTelephone">Emergency telephone number, where a place of sale asks for one.</param>
/// <param name="VatNumber">VAT number without the country code, for the UFI.</param>
public sealed record Maker(
    string Id,
    TextPlace Place,
    string Name,
    IReadOnlyList<string> AddressLines,
    string Telephone,
    string? Email,
    string? Web,
    string? EmergencyTelephone,
    string? VatCountry,
    string? VatNumber
) : IDeclaration;

/// <summary>Room inside or outside a vessel: round with a diameter, or rectangular with two sides.</summary>
/// <param name="Diameter">Diameter of a round vessel; null when rectangular.</param>
/// <param name="Length">Long side of a rectangular vessel; null when round.</param>
/// <param name="Width">Short side of a rectangular vessel; null when round.</param>
/// <param name="Height">Height.</param>
public sealed record VesselSize(Millimetres? Diameter, Millimetres? Length, Millimetres? Width, Millimetres Height)
{
    /// <summary>Length around the level cross-section, millimetres.</summary>
    public double PerimeterMillimetres => Diameter is { } d ? Math.PI * d.Value : 2 * (Length!.Value.Value + Width!.Value.Value);

    /// <summary>Area of the level cross-section, square millimetres.</summary>
    public double CrossSectionSquareMillimetres =>
        Diameter is { } d ? Math.PI * d.Value * d.Value / 4 : Length!.Value.Value * Width!.Value.Value;
}

/// <summary>What the candle is poured into.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Name.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="Brimful">Volume to the brim; the package's capacity in the sense of the label-size table.</param>
/// <param name="Fill">Volume to the intended fill line, when declared.</param>
/// <param name="Inner">Inner size, when declared.</param>
/// <param name="Outer">Outer size, when declared.</param>
public sealed record Vessel(
    string Id,
    TextPlace Place,
    string Name,
    string Material,
    Millilitres Brimful,
    Millilitres? Fill,
    VesselSize? Inner,
    VesselSize? Outer
) : IDeclaration
{
    /// <summary>Volume below a headspace kept free under the brim; null when the inner size is not declared.</summary>
    public Millilitres? Below(Millimetres headspace) =>
        Inner is { } inner
            ? new Millilitres(Math.Max(0, Brimful.Value - (inner.CrossSectionSquareMillimetres * headspace.Value / 1000)))
            : null;
}

/// <summary>Where a candle is meant to burn.</summary>
public enum CandleUse
{
    /// <summary>In the house (EN 15494).</summary>
    Indoor,

    /// <summary>Out of doors (EN 17617).</summary>
    Outdoor,
}

/// <summary>How much of an oil goes into a blend.</summary>
public enum OilMeasure
{
    /// <summary>Percent by mass of the oil blend.</summary>
    Share,

    /// <summary>Grams.</summary>
    Grams,

    /// <summary>Millilitres, turned into grams by the oil's density.</summary>
    Millilitres,

    /// <summary>Drops, turned into grams by the oil's drop mass.</summary>
    Drops,
}

/// <summary>One oil of a blend.</summary>
/// <param name="Oil">Which oil.</param>
/// <param name="Amount">How much, in <paramref name="Measure"/>.</param>
/// <param name="Measure">The unit of <paramref name="Amount"/>.</param>
/// <param name="Place">Where it is declared.</param>
public sealed record OilPart(Reference Oil, double Amount, OilMeasure Measure, TextPlace Place);

/// <summary>An extra in a candle.</summary>
/// <param name="Extra">Which extra.</param>
/// <param name="Percent">Percent of the wax; null when weighed.</param>
/// <param name="Weight">Grams; null when given in percent.</param>
public sealed record ExtraPart(Reference Extra, MassPercent? Percent, Grams? Weight);

/// <summary>A second pour.</summary>
/// <param name="Scented">True when it comes from the same scented melt: then it does not dilute.</param>
/// <param name="Percent">Its share of the finished candle; null when weighed.</param>
/// <param name="Weight">Its mass; null when given in percent.</param>
public sealed record TopUp(bool Scented, MassPercent? Percent, Grams? Weight);

/// <summary>Working temperatures of a candle.</summary>
/// <param name="Melt">Melting temperature.</param>
/// <param name="AddFragrance">At which the oil is stirred in.</param>
/// <param name="Pour">Pouring temperature.</param>
/// <param name="TopUp">Temperature of the second pour.</param>
public sealed record WorkingTemperatures(Celsius? Melt, Celsius? AddFragrance, Celsius? Pour, Celsius? TopUp);

/// <summary>Wicks of a candle.</summary>
/// <param name="Count">How many.</param>
/// <param name="Kind">Kind, in the maker's words.</param>
/// <param name="TrimTo">Length that the buyer trims them to.</param>
public sealed record Wicks(int Count, string? Kind, Millimetres TrimTo);

/// <summary>The size of a label that the maker asks for.</summary>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
public sealed record LabelSize(Millimetres Width, Millimetres Height)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Figures.Plain(Width.Value)} x {Figures.Plain(Height.Value)} mm";
}

/// <summary>Shapes that a maker may ask for.</summary>
public enum LabelForm
{
    /// <summary>A rectangle, with rounded corners where a corner radius is given.</summary>
    Rectangle,

    /// <summary>A circle, for a base or a lid.</summary>
    Circle,

    /// <summary>A ring around a hole.</summary>
    Ring,

    /// <summary>A band around the vessel; its length is the vessel's circumference.</summary>
    Band,

    /// <summary>A folded leaflet or tie-on tag: a front and an inside of the same size.</summary>
    Leaflet,
}

/// <summary>The label that a maker asks for.</summary>
/// <param name="Form">Its shape.</param>
/// <param name="Size">Width and height; of a circle or ring its diameter twice; of a band the height counts.</param>
/// <param name="Corner">Corner radius; zero for square corners.</param>
/// <param name="Hole">Diameter of a ring's hole; zero otherwise.</param>
public sealed record LabelRequest(LabelForm Form, LabelSize Size, Millimetres Corner, Millimetres Hole)
{
    /// <inheritdoc/>
    public override string ToString() =>
        Form switch
        {
            LabelForm.Circle => $"circle of {Size.Width}",
            LabelForm.Ring => $"ring of {Size.Width} with a hole of {Hole}",
            LabelForm.Band => $"band of {Size}",
            LabelForm.Leaflet => $"leaflet of {Size}",
            _ => Size.ToString(),
        };
}

/// <summary>A candle as planned.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Use">Indoors or outdoors.</param>
/// <param name="Vessel">What it is poured into.</param>
/// <param name="NetMass">Nominal quantity on the label.</param>
/// <param name="Wax">Its wax.</param>
/// <param name="WaxWeight">Grams of wax in the scented melt, when the recipe is by mass.</param>
/// <param name="Load">Fragrance load, when the recipe is not by mass.</param>
/// <param name="Oils">The oils of the blend.</param>
/// <param name="Extras">Dyes and other extras.</param>
/// <param name="TopUp">Second pour, if any.</param>
/// <param name="Wicks">Its wicks.</param>
/// <param name="Headspace">Room kept free below the brim.</param>
/// <param name="Temperatures">Working temperatures.</param>
/// <param name="SoldIn">Country codes of the places of sale.</param>
/// <param name="Languages">Languages of the label; empty for the places' own.</param>
/// <param name="Label">Label asked for; null for the smallest lawful arrangement that the text fits on.</param>
/// <param name="BatchCode">Batch code to print; null when none is known yet.</param>
/// <param name="FormulationNumber">Formulation number for the UFI; null when none was given out yet.</param>
/// <param name="OnMarketSince">Since when it has been sold; null for a new candle.</param>
/// <param name="Gtin">GS1 article number (EAN-13) for a bar code; null for none.</param>
/// <param name="InformationUrl">Web address for a QR code; null for none.</param>
public sealed record Candle(
    string Id,
    TextPlace Place,
    string Name,
    CandleUse Use,
    Reference Vessel,
    Grams NetMass,
    Reference Wax,
    Grams? WaxWeight,
    FragranceLoad? Load,
    IReadOnlyList<OilPart> Oils,
    IReadOnlyList<ExtraPart> Extras,
    TopUp? TopUp,
    Wicks Wicks,
    Millimetres? Headspace,
    WorkingTemperatures Temperatures,
    IReadOnlyList<string> SoldIn,
    IReadOnlyList<string> Languages,
    LabelRequest? Label,
    string? BatchCode,
    long? FormulationNumber,
    DateOnly? OnMarketSince,
    string? Gtin,
    string? InformationUrl
) : IDeclaration;

/// <summary>What was really weighed for a batch; it wins over the candle's plan.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Candle">Which candle was made.</param>
/// <param name="Code">Batch code on the label.</param>
/// <param name="Poured">Day of pouring.</param>
/// <param name="WaxWeight">Grams of wax in the scented melt.</param>
/// <param name="Oils">Grams of each oil.</param>
/// <param name="Extras">Grams of each extra.</param>
/// <param name="TopUp">Grams of the second pour.</param>
public sealed record Batch(
    string Id,
    TextPlace Place,
    Reference Candle,
    string Code,
    DateOnly Poured,
    Grams WaxWeight,
    IReadOnlyList<OilPart> Oils,
    IReadOnlyList<ExtraPart> Extras,
    TopUp? TopUp
) : IDeclaration;

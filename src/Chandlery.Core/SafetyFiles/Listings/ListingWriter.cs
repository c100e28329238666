using System.Text;
using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Listings;

/// <summary>Writes listings in the forms that shops take.</summary>
public static class ListingWriter
{
    /// <summary>Headings of the columns of <see cref="Row"/>.</summary>
    public static IReadOnlyList<string> Columns { get; } =
    ["candle", "name", "law", "day", "language", "use", .. EnumName.All<ListingPart>()];

    /// <summary>The text for the shop, and below a line what is not for it.</summary>
    public static string Text(ShopListing listing)
    {
        var text = new StringBuilder();
        foreach (ListingLine line in listing.Lines)
        {
            text.Append(line.Heading).Append(":\n");
            foreach (string sentence in line.Texts)
            {
                text.Append("  ").Append(sentence).Append('\n');
            }
        }

        text.Append("---- not for the shop ----\n");
        text.Append(
            System.Globalization.CultureInfo.InvariantCulture,
            $"{listing.Of.Id}, {EnumName.Of(listing.Use)}, {listing.Of.Edition.Id}, as of {IsoDay.Plain(listing.Of.AsOf)}\n"
        );
        foreach (ListingLine line in listing.Lines)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{line.Heading}: {line.Clause}\n");
        }

        foreach (string look in listing.Look)
        {
            text.Append("Look: ").Append(look).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>HTML with the vocabulary of schema.org for products, as microdata.</summary>
    public static string Html(ShopListing listing)
    {
        var html = new StringBuilder();
        html.Append(
            System.Globalization.CultureInfo.InvariantCulture,
            $"<article itemscope itemtype=\"https://schema.org/Product\" lang=\"{listing.Language}\">\n"
        );
        html.Append("  <h2 itemprop=\"name\">").Append(Safe(listing.Of.Candle.Name)).Append("</h2>\n");
        foreach (ListingLine line in listing.Lines)
        {
            html.Append(
                line.Part switch
                {
                    ListingPart.Product => Paragraph(line, " itemprop=\"category\"", line.Texts.Skip(1)),
                    ListingPart.Picture =>
                        $"  <img itemprop=\"image\" src=\"{Safe(line.Texts[0])}\" alt=\"{Safe(listing.Of.Candle.Name)}\">\n",
                    ListingPart.Maker => Organization(line, listing.Of.Roles.Maker, "manufacturer"),
                    ListingPart.Identifier => Identifier(line, listing.Of.Candle.Gtin?.ToString()),
                    _ => Property(line),
                }
            );
        }

        return html.Append("</article>\n").ToString();
    }

    /// <summary>The cells of a table's row.</summary>
    public static IReadOnlyList<string> Row(ShopListing listing) =>
        [
            listing.Of.Id,
            listing.Of.Candle.Name,
            listing.Of.Edition.Id,
            IsoDay.Plain(listing.Of.AsOf),
            listing.Language,
            EnumName.Of(listing.Use),
            .. Enum.GetValues<ListingPart>().Select(p => string.Join(' ', listing.Lines.FirstOrDefault(l => l.Part == p)?.Texts ?? [])),
        ];

    /// <summary>The listing for programs.</summary>
    public static ListingReport Report(ShopListing listing) =>
        new ListingReport
        {
            Candle = listing.Of.Id,
            Name = listing.Of.Candle.Name,
            Law = listing.Of.Edition.Id,
            Places = [.. listing.Of.Places.Select(p => p.Code)],
            AsOf = IsoDay.Plain(listing.Of.AsOf),
            Language = listing.Language,
            Use = EnumName.Of(listing.Use),
            Parts = [.. listing.Lines.Select(l => new ListingPartReport(EnumName.Of(l.Part), l.Heading, l.Texts, l.Clause))],
            Look = listing.Look,
        };

    private static string Organization(ListingLine line, Party party, string role)
    {
        string contact =
            party.Electronic is not { } address ? ""
            : address.Contains('@', StringComparison.Ordinal)
                ? $" <a itemprop=\"email\" href=\"mailto:{Safe(address)}\">{Safe(address)}</a>"
            : $" <a itemprop=\"url\" href=\"{Safe(address)}\">{Safe(address)}</a>";
        return $"  <p itemprop=\"{role}\" itemscope itemtype=\"https://schema.org/Organization\">{Safe(line.Heading)}: "
            + $"<span itemprop=\"name\">{Safe(party.Name)}</span>, "
            + $"<span itemprop=\"address\">{Safe(string.Join(", ", party.AddressLines))}</span>{contact}</p>\n";
    }

    private static string Identifier(ListingLine line, string? gtin) =>
        gtin is null
            ? Property(line)
            : $"  <p>{Safe(line.Heading)}: GTIN <span itemprop=\"gtin13\">{Safe(gtin)}</span>; {Safe(string.Join("; ", line.Texts.Skip(1)))}</p>\n";

    private static string Paragraph(ListingLine line, string property, IEnumerable<string> texts) =>
        $"  <p{property}>{Safe(string.Join(' ', texts))}</p>\n";

    private static string Property(ListingLine line) =>
        "  <div itemprop=\"additionalProperty\" itemscope itemtype=\"https://schema.org/PropertyValue\">"
        + $"<h3 itemprop=\"name\">{Safe(line.Heading)}</h3>"
        + $"<p itemprop=\"value\">{string.Join("<br>", line.Texts.Select(Safe))}</p></div>\n";

    private static string Safe(string text) =>
        text.Replace("&", "&amp;", StringComparison.Ordinal)
            .Replace("<", "&lt;", StringComparison.Ordinal)
            .Replace(">", "&gt;", StringComparison.Ordinal)
            .Replace("\"", "&quot;", StringComparison.Ordinal);
}

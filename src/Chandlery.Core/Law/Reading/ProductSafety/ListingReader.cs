using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>Reads <c>listing.yaml</c>: what offers and advertisements must show.</summary>
internal static class ListingReader
{
    public static ListingRules Read(Fields fields)
    {
        var rules = new ListingRules([.. fields.Groups("parts").SelectMany(ReadRow)]);
        fields.Done();
        return rules;
    }

    // A row may name several parts that one clause asks for.
    private static IEnumerable<ListingRow> ReadRow(Fields row)
    {
        IReadOnlyList<ListingUse> uses = row.Enumerations<ListingUse>("for");
        IReadOnlyList<ListingPart> parts = row.Enumerations<ListingPart>("show");
        InForce days = SafetyRows.Days(row);
        Hazards.Citation clause = LawCodes.Citation(row);
        LawRows.Close(row);
        return parts.Select(part => new ListingRow(part, uses, days, clause));
    }
}

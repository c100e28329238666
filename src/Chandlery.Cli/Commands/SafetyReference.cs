using System.Globalization;
using System.Text;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>The part of the reference that lists the rows of the law on product safety.</summary>
internal static class SafetyReference
{
    public static void Write(StringBuilder page, ProductSafetyLaw law)
    {
        page.Append(
            "\n## Product safety\n\nRows of `data/product-safety`, which say beside each other how they were checked; `chandlery version --memory` lists those that are from memory.\n"
        );
        foreach (IGrouping<string, string> group in law.ByPlace.GroupBy(p => p.Value, p => p.Key))
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"\n### {group.Key}\n\nPlaces: {string.Join(", ", group)}.\n\n| what | holds | clause |\n|---|---|---|\n"
            );
            foreach ((string what, InForce? days, Citation clause) in Rows(law, group.Key))
            {
                page.Append(CultureInfo.InvariantCulture, $"| {Cell(what)} | {Days(days)} | {Cell(clause)} |\n");
            }
        }
    }

    private static IEnumerable<(string What, InForce? Days, Citation Clause)> Rows(ProductSafetyLaw law, string id) =>
        [
            .. (law.Markets.Find(id)?.Roles ?? []).Select(r => (r.Says, (InForce?)r.InForce, r.Clause)),
            .. (law.Markets.Find(id)?.Questions ?? []).Select(q => ($"{q.Question}: {q.Says}", (InForce?)q.InForce, q.Clause)),
            .. (law.Markets.Find(id)?.Claims ?? []).Select(c =>
                ($"Claim ({string.Join(", ", c.Words)}): {c.Says}", (InForce?)c.InForce, c.Clause)
            ),
            .. (law.Listings.Find(id)?.Rows ?? []).Select(r => ($"{string.Join(" and ", r.For)}: {r.Part}", (InForce?)r.InForce, r.Clause)),
            .. (law.Recalls.Find(id)?.Parts ?? []).Select(p => ($"Recall notice: {p.Says}", (InForce?)null, p.Clause)),
            .. (law.Recalls.Find(id)?.Keep ?? []).Select(k =>
                ($"Kept {(k.AtMost ? "at most" : "for")} {k.Years} years: {k.What}", (InForce?)null, k.Clause)
            ),
            .. (law.Incidents.Find(id)?.Clocks ?? []).Select(c => ($"Clock {c.Id}: {c.Says}", (InForce?)null, c.Clause)),
            .. law.Quantities.Find(id) is { } quantity
                ? [($"Contents: {quantity.Tolerances.Count} tolerances", (InForce?)null, quantity.Clause)]
                : Array.Empty<(string, InForce?, Citation)>(),
            .. (law.Packagings.Find(id)?.Marks ?? []).Select(m => ($"Packaging: {m.Says}", (InForce?)m.InForce, m.Clause)),
            .. (law.Duties.Find(id)?.Rows ?? []).Select(d => ($"Duty {d.Id}: {d.Says}", (InForce?)d.InForce, d.Clause)),
        ];

    private static string Days(InForce? days) =>
        string.Join(
            ' ',
            new[]
            {
                days?.From is { } from ? $"from {IsoDay.Plain(from)}" : "",
                days?.Until is { } until ? $"until {IsoDay.Plain(until)}" : "",
            }.Where(d => d.Length > 0)
        );

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}

using Chandlery.Core.Declared;

namespace Chandlery.Register;

/// <summary>
/// Looks entries up in the indexes, in their order and no more than are asked for: what is rare and what stands in every entry are
/// found alike, however many entries there are.
/// </summary>
/// <param name="store">The database.</param>
internal sealed class RegisterSearch(RegisterStore store)
{
    // So many texts, and one in so many: then it is quicker to walk than to look each one up.
    private const int ManyTexts = 64;
    private const int OneInTexts = 8;
    private const int FirstTexts = 256;
    private const int Sample = 32;

    /// <summary>Numbers of the entries that match.</summary>
    /// <param name="query">What to look for.</param>
    /// <param name="from">The number to begin with.</param>
    /// <param name="latestFirst">Whether to go from the latest to the oldest.</param>
    public IEnumerable<long> Numbers(RegisterQuery query, long from, bool latestFirst)
    {
        List<IReadOnlyList<INumbers>> wanted = store.Guarded(() => Joined([.. Wanted(query)], from, latestFirst));
        List<Walk> walks = [.. wanted.Select(w => w is [Walk walk] ? walk : null).OfType<Walk>()];

        // Most entries have what is walked through: beside another condition only those that meet it are looked at.
        List<Walk> filters = [.. walks.Skip(walks.Count == wanted.Count ? 1 : 0)];
        List<Condition> conditions =
        [
            .. wanted.Where(w => w is not [Walk walk] || !filters.Contains(walk)).Select(w => new Condition(store, w, latestFirst)),
        ];
        long number = from;
        while (true)
        {
            bool isFound = true;
            foreach (Condition condition in conditions)
            {
                if (store.Guarded(() => condition.Seek(number)) is not { } next)
                {
                    yield break;
                }

                isFound &= next == number;
                number = next;
            }

            if (isFound)
            {
                long found = number;
                if (filters.TrueForAll(f => store.Guarded(() => f.Holds(store, found))))
                {
                    yield return number;
                }

                number += latestFirst ? -1 : 1;
            }
        }
    }

    // What is looked up in indexes becomes one question that begins with the rarest; what is walked through stays beside it.
    private List<IReadOnlyList<INumbers>> Joined(List<IReadOnlyList<INumbers>> wanted, long from, bool latestFirst)
    {
        List<IReadOnlyList<Posting>> lookedUp = [.. wanted.Where(w => w.All(v => v is Posting)).Select(w => w.Cast<Posting>().ToList())];
        if (lookedUp.Count < 2)
        {
            return wanted;
        }

        IReadOnlyList<Posting> rarest = lookedUp.MinBy(values => values.Sum(v => Density(v, from, latestFirst)))!;
        List<IReadOnlyList<Posting>> others = [.. lookedUp.Where(l => l != rarest)];
        return
        [
            [.. rarest.Select(v => new Joint(v, others))],
            .. wanted.Where(w => !w.All(v => v is Posting)),
        ];
    }

    // How many of the entries have it, by the first ones that do; next to none where these are all.
    private double Density(Posting value, long from, bool latestFirst)
    {
        IReadOnlyList<long> first = value.Read(store, from, latestFirst, Sample);
        return first.Count < Sample ? first.Count / (double)long.MaxValue : Sample / (Math.Abs(first[^1] - first[0]) + 1.0);
    }

    // A number or a whole name is looked up; for a part of a name, the different names are gone through.
    private IEnumerable<IReadOnlyList<INumbers>> Wanted(RegisterQuery query)
    {
        if (query.Batch is { } batch)
        {
            yield return [new Posting("entry", "batch", batch), new Posting("entry", "subject", batch)];
        }

        if (query.Substance is { } substance)
        {
            yield return CasNumber.Parse(substance).Success
                ? [new Posting("held_substance", "cas", substance)]
                : With("held_substance", "name", substance);
        }

        if (query.Oil is { } oil)
        {
            yield return store.One("SELECT 1 FROM used_oil WHERE oil = @p0 LIMIT 1", oil) is not null
                ? [new Posting("used_oil", "oil", oil)]
                : With("used_oil", "name", oil);
        }

        if (query.Document is { } document)
        {
            yield return With("used_oil", "document", document);
        }

        if (query.Revised is { } revised)
        {
            yield return [new Posting("used_oil", "revised", revised)];
        }

        if (query == new RegisterQuery())
        {
            yield return [new Posting("entry")];
        }
    }

    private IReadOnlyList<INumbers> With(string table, string column, string part)
    {
        bool Has(string value) => value.Contains(part, StringComparison.OrdinalIgnoreCase);
        List<string> all = store.KnowsTexts
            ? store.Rows(
                row => RegisterStore.Text(row, 0),
                $"SELECT value FROM {KnownTexts.Table} WHERE place = @p0",
                KnownTexts.PlaceOf(table, column)
            )
            : Stepped(table, column, Has);
        List<string> matching = [.. all.Where(Has)];
        return IsCommon(matching.Count, all.Count)
            ? [new Walk(table, column, part)]
            : [.. matching.Select(value => new Posting(table, column, value))];
    }

    // What the first texts show of a part that most have is enough to walk.
    private List<string> Stepped(string table, string column, Func<string, bool> has)
    {
        List<string> all = Steps(table, column, "", $" LIMIT {FirstTexts}");
        if (all.Count == FirstTexts && !IsCommon(all.Count(has), all.Count))
        {
            all.AddRange(Steps(table, column, $" WHERE {column} > @p0", "", all[^1]));
        }

        return all;
    }

    private static bool IsCommon(int matching, int all) => matching > ManyTexts && matching * OneInTexts > all;

    private List<string> Steps(string table, string column, string first, string limit, params object[] values) =>
        store.Rows(
            row => RegisterStore.Text(row, 0),
            $"{KnownTexts.Steps(table, column, first)} SELECT value FROM step WHERE value IS NOT NULL{limit}",
            values
        );
}

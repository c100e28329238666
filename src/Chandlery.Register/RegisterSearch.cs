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

    /// <summary>Numbers of the entries that match.</summary>
    /// <param name="query">What to look for.</param>
    /// <param name="from">The number to begin with.</param>
    /// <param name="latestFirst">Whether to go from the latest to the oldest.</param>
    public IEnumerable<long> Numbers(RegisterQuery query, long from, bool latestFirst)
    {
        List<Condition> conditions =
        [
            .. store.Guarded(() => Wanted(query).Select(values => new Condition(store, values, latestFirst)).ToList()),
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
                yield return number;
                number += latestFirst ? -1 : 1;
            }
        }
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

    // The index is stepped through from one value to the next, so a million rows with a thousand names cost a thousand steps.
    private IReadOnlyList<INumbers> With(string table, string column, string part)
    {
        List<string> all = store.Rows(
            row => RegisterStore.Text(row, 0),
            $"""
            WITH RECURSIVE step(value) AS (
                SELECT min({column}) FROM {table}
                UNION ALL
                SELECT (SELECT min({column}) FROM {table} WHERE {column} > step.value) FROM step WHERE step.value IS NOT NULL)
            SELECT value FROM step WHERE value IS NOT NULL
            """
        );
        List<string> matching = [.. all.Where(value => value.Contains(part, StringComparison.OrdinalIgnoreCase))];
        return matching.Count > ManyTexts && matching.Count * OneInTexts > all.Count
            ? [new Walk(table, column, part)]
            : [.. matching.Select(value => new Posting(table, column, value))];
    }
}

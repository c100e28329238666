using System.Collections.Concurrent;
using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Core.Declared;

namespace Chandlery.Workbench.Keeping;

/// <summary>The formulation numbers that compositions of a folder have or had.</summary>
internal sealed partial class FormulationNumbers(History history)
{
    // A kept text never changes: each is looked at once.
    private readonly ConcurrentDictionary<string, long> highest = new(StringComparer.Ordinal);

    /// <summary>A number that no candle has or had: a number that a composition had stays its own, though its candle has another by now.</summary>
    public long Next(Catalogue catalogue) =>
        catalogue
            .OfKind<Candle>()
            .Select(c => c.FormulationNumber ?? 0)
            .Concat(history.Hashes().Select(hash => highest.GetOrAdd(hash, h => HighestIn(history.Text(h) ?? ""))))
            .DefaultIfEmpty()
            .Max() + 1;

    private static long HighestIn(string text) =>
        Numbered().Matches(text).Select(m => long.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)).DefaultIfEmpty().Max();

    [GeneratedRegex(@"^formulationNumber: *([0-9]{1,9})", RegexOptions.Multiline)]
    private static partial Regex Numbered();
}

using System.Text.RegularExpressions;

namespace Chandlery.Core.Law.AnnexVi;

/// <summary>A line of the table, cut into cells.</summary>
internal static partial class AnnexLine
{
    /// <summary>The head of the table: the names of its cells.</summary>
    public const string Head = "index\tcas\tec\tname\tclasses\tsupplemental\tlimits\tnotes\tact\tfrom";

    /// <summary>How many cells a line has.</summary>
    public static readonly int Cells = Head.Split('\t').Length;

    /// <summary>The index number of a line.</summary>
    public static string IndexOf(string line) => line[..Math.Max(0, line.IndexOf('\t', StringComparison.Ordinal))];

    /// <summary>CAS and EC numbers of a line.</summary>
    public static IEnumerable<string> NumbersOf(string line)
    {
        string[] cells = line.Split('\t');
        return cells.Length < Cells ? [] : Number().Matches($"{cells[1]} {cells[2]}").Select(m => m.Value);
    }

    [GeneratedRegex("[0-9]+-[0-9]+-[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}

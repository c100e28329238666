namespace Chandlery.Yaml;

/// <summary>Collects problems, so that one run shows all of them.</summary>
public sealed class Problems
{
    private readonly List<Problem> found = [];

    /// <summary>The problems so far, in the order found.</summary>
    public IReadOnlyList<Problem> Found => found;

    /// <summary>True when nothing was found.</summary>
    public bool None => found.Count == 0;

    /// <summary>Notes a problem.</summary>
    public void Add(TextPlace place, string what, string remedy = "") => found.Add(new Problem(place, what, remedy));

    /// <summary>Notes a problem.</summary>
    public void Add(Problem problem) => found.Add(problem);

    /// <summary>Notes something that a file's own problems are the cause of.</summary>
    public void AddCausedBy(string file, TextPlace place, string what) => found.Add(new Problem(place, what, "") { CausedBy = [file] });

    /// <summary>Takes over the problems of another collection.</summary>
    public void AddRange(IEnumerable<Problem> problems) => found.AddRange(problems);
}

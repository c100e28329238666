namespace Chandlery.Core.Declared;

/// <summary>Where in a file something stands.</summary>
/// <param name="File">File name as the user knows it.</param>
/// <param name="Line">Line, from 1; 0 when the whole file is meant.</param>
/// <param name="Column">Column, from 1.</param>
public sealed record TextPlace(string File, int Line, int Column)
{
    /// <summary><c>file:line:column</c>, as editors understand it.</summary>
    public override string ToString() => Line == 0 ? File : $"{File}:{Line}:{Column}";
}

/// <summary>Something wrong with what was declared.</summary>
/// <param name="Place">Where.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Remedy">What to write instead.</param>
public sealed record Problem(TextPlace Place, string What, string Remedy)
{
    /// <summary>One line for a terminal.</summary>
    public override string ToString() => $"{Place}: {What} {Remedy}".TrimEnd();
}

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

    /// <summary>Takes over the problems of another collection.</summary>
    public void AddRange(IEnumerable<Problem> problems) => found.AddRange(problems);
}

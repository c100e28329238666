namespace Chandlery.Yaml;

/// <summary>Something wrong with what was declared.</summary>
/// <param name="Place">Where.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Remedy">What to write instead.</param>
public sealed record Problem(TextPlace Place, string What, string Remedy)
{
    /// <summary>Files whose own problems are the cause; empty when the problem stands for itself.</summary>
    public IReadOnlyList<string> CausedBy { get; init; } = [];

    /// <summary>One line for a terminal.</summary>
    public override string ToString() => $"{Place}: {What} {Remedy}".TrimEnd();
}

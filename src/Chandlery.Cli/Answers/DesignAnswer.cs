namespace Chandlery.Cli.Answers;

/// <summary>A design of fronts, for programs.</summary>
/// <param name="Design">Its name.</param>
/// <param name="About">What it looks like.</param>
internal sealed record DesignAnswer(string Design, string About);

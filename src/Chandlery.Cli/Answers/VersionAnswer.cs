namespace Chandlery.Cli.Answers;

/// <summary>The program and the editions of the law that it carries, for programs.</summary>
/// <param name="Version">The program's version.</param>
/// <param name="Editions">The editions.</param>
internal sealed record VersionAnswer(string Version, IReadOnlyList<EditionAnswer> Editions);

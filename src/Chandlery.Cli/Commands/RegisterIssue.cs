namespace Chandlery.Cli.Commands;

/// <summary>What is issued with an entry.</summary>
/// <param name="Documents">The files: name and bytes.</param>
/// <param name="Keeps">Whether the register keeps them.</param>
/// <param name="By">Who issues them.</param>
internal sealed record RegisterIssue(IReadOnlyList<(string Name, byte[] Bytes)> Documents, bool Keeps, string By);

namespace Chandlery.Cli.Commands;

/// <summary>A file that is ready to be written.</summary>
internal sealed record PendingFile(string Name, byte[] Content);

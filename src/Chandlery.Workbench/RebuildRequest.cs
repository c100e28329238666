namespace Chandlery.Workbench;

/// <summary>Asks for what is searched in the register to be made anew.</summary>
internal sealed record RebuildRequest;

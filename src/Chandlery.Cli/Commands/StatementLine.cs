namespace Chandlery.Cli.Commands;

/// <summary>A statement as <c>chandlery statements</c> prints it for programs.</summary>
/// <param name="Text">The law's text, with the dots, choices and blanks that it leaves to the supplier.</param>
/// <param name="Printed">As a label prints it; <c>{names}</c> stands for the names of substances.</param>
/// <param name="Source">The act, its state and its language.</param>
/// <param name="Checked">How the text was taken or checked.</param>
/// <param name="Verified">True when it was taken from the act's text or compared with an independent copy of it.</param>
internal sealed record StatementLine(string Text, string Printed, string Source, string Checked, bool Verified);

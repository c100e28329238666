namespace Chandlery.Paper.Papers;

/// <summary>What came of making a paper: <see cref="MadePaper"/> or <see cref="MissingPaper"/>.</summary>
public abstract record PaperOutcome;

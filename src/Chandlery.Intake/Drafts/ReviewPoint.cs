namespace Chandlery.Intake.Drafts;

/// <summary>Something that a reviewer must look at.</summary>
/// <param name="Line">Line of the drafted YAML, from 1.</param>
/// <param name="What">What and why.</param>
public sealed record ReviewPoint(int Line, string What);

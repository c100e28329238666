namespace Chandlery.Core.Declared;

/// <summary>Something that was done on a day.</summary>
/// <param name="On">The day.</param>
/// <param name="What">What was done.</param>
public sealed record DayNote(DateOnly On, string What);

namespace Chandlery.Yaml.Shapes;

/// <summary>A day, year-month-day.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means.</param>
public sealed record DayField(string Key, string About) : Field(Key, About);

namespace Chandlery.Sheets.Wild;

/// <summary>Which lines of a table are drawn.</summary>
public enum TableRules
{
    None,
    Head,
    Level,
    Grid,
}

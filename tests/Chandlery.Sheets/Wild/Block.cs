namespace Chandlery.Sheets.Wild;

/// <summary>A piece of a printed sheet.</summary>
public abstract record Block;

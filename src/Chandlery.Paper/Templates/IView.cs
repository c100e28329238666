namespace Chandlery.Paper.Templates;

/// <summary>What a template, or a part of what it is given, may use. The record that carries the facts also names them.</summary>
public interface IView
{
    /// <summary>
    /// Every fact by the name that templates use: texts, numbers, other views, and lists of these. Listed by hand, because a
    /// program that is compiled ahead of time cannot look members up by their names.
    /// </summary>
    IEnumerable<(string Name, object? Value)> Values { get; }
}

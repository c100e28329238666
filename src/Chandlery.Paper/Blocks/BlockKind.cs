using System.Xml.Linq;
using Chandlery.Paper.Markup;

namespace Chandlery.Paper.Blocks;

/// <summary>A kind of block, as templates write it.</summary>
/// <param name="Element">Name of its element.</param>
/// <param name="Read">Reads an element; null for one that shows nothing or has problems, which the reading collects.</param>
internal sealed record BlockKind(string Element, Func<XElement, MarkupReading, Block?> Read);

using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a gift set.</summary>
internal static class SetShape
{
    public static readonly TextField Name = new("name", "Trade name.", "First Evening") { Needed = true };

    public static readonly TextField Product = new("product", "The product's file name without .yaml.", WaxShape.ReferenceExample)
    {
        Needed = true,
    };

    public static readonly NumberField Count = new("count", "How many of it; one where nothing is said.", "2", 1, 100)
    {
        LowAllowed = true,
        Whole = true,
    };

    public static readonly GroupsField Contains = new(
        "contains",
        "The products in the box.",
        new Shape("setPart", "A product of a set.", [Product, Count])
    )
    {
        Needed = true,
        NotEmpty = true,
    };

    public static readonly FlagField SeenThrough = new(
        "seenThrough",
        "yes: every label inside can be read without opening the box; otherwise the box bears them too."
    );

    public static readonly Shape Set = new(
        "set",
        "A gift set: several products in one box",
        [Name, Contains, SeenThrough, CandleShape.SoldIn]
    );
}

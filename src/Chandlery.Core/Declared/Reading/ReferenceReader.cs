using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads the name of another declaration.</summary>
internal static class ReferenceReader
{
    /// <summary>A reference, with its place.</summary>
    public static Reference Read(Fields fields, TextField field)
    {
        string id = fields.Text(field);
        return new Reference(id, fields.PlaceOf(field));
    }
}

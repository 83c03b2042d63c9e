using System.Text.Json.Serialization;

namespace LabVolatility.Laboratory.Certificates.Documents;

[JsonConverter(typeof(JsonStringEnumConverter<LimitEdge>))]
public enum LimitEdge
{
    Maximum,
    Minimum,
}

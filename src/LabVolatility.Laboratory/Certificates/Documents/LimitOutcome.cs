using System.Text.Json.Serialization;

namespace LabVolatility.Laboratory.Certificates.Documents;

[JsonConverter(typeof(JsonStringEnumConverter<LimitOutcome>))]
public enum LimitOutcome
{
    Conforms,
    DoesNotConform,
    NotDecided,
    Incomplete,
}

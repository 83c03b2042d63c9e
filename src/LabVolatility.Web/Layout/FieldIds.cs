namespace LabVolatility.Web.Layout;

/// <summary>The element id of a field, from the JSON pointer that a problem carries: "/readings/totalPressure".</summary>
public static class FieldIds
{
    public static string Of(string field) => "field" + field.Replace('/', '-');
}

using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>A trigger that refuses every row in the name of a rule: the database says no where the use case said yes.</summary>
internal static class RefusingTrigger
{
    public static async Task Add(TestLaboratory lab, string table, string rule)
    {
        if (lab.Engine is StorageEngine.Sqlite)
        {
            await lab.Raw($"CREATE TRIGGER a_refusal BEFORE INSERT ON {table} BEGIN SELECT RAISE(ABORT, '{rule}: for a test'); END");
            return;
        }

        await lab.Raw($"CREATE FUNCTION a_refusal() RETURNS trigger LANGUAGE plpgsql AS $f$ BEGIN RAISE EXCEPTION '{rule}: for a test'; END $f$");
        await lab.Raw($"CREATE TRIGGER a_refusal BEFORE INSERT ON {table} FOR EACH ROW EXECUTE FUNCTION a_refusal()");
    }
}

namespace LabVolatility.Laboratory.Storage;

public enum StorageEngine
{
    Sqlite,
    Postgres,
}

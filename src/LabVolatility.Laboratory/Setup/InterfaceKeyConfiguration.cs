using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Setup;

internal sealed class InterfaceKeyConfiguration : IEntityTypeConfiguration<InterfaceKey>
{
    public void Configure(EntityTypeBuilder<InterfaceKey> key)
    {
        key.ToTable("interface_keys");
        key.Property(k => k.Name).HasMaxLength(Lengths.Name);
        key.Property(k => k.Prefix).HasMaxLength(Lengths.Code);
        key.Property(k => k.Hash).HasMaxLength(Lengths.Hash);
        key.HasIndex(k => k.Hash).IsUnique();
        key.HasOne<Person>().WithMany().HasForeignKey(k => k.OwnerId);
    }
}

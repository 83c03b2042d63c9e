using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.People;

internal sealed class PersonConfiguration : IEntityTypeConfiguration<Person>
{
    public void Configure(EntityTypeBuilder<Person> person)
    {
        person.ToTable("people");
        person.Property(p => p.FullName).HasMaxLength(Lengths.Name);
        person.Property(p => p.Theme).HasMaxLength(Lengths.Code);
    }
}

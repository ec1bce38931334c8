### Not yet read by a native potter.

dust = Poussière
dust-text = L’émail et la terre secs contiennent de la silice, qui abîme les poumons pour toujours. Nettoyez à l’humide et ne balayez jamais à sec. Versez la poudre dans l’eau, pas l’eau sur la poudre. Si vous ne pouvez pas éviter la poussière, portez un masque respiratoire homologué pour la silice. Les règles de votre lieu de travail et les fiches de données de sécurité passent avant tout.
materials = Matières toxiques et solubles
materials-text = Certaines matières d’émail sont des poisons, et certaines se dissolvent et traversent la peau. Lisez chaque fiche de données de sécurité, portez des gants, n’apportez ni nourriture ni boisson, et lavez-vous les mains. Éliminez les déchets selon vos règles locales.
spraying = Pulvérisation
spraying-text = Le brouillard d’émail pénètre loin dans les poumons. Ne pulvérisez que dans une cabine dont l’aspiration fonctionne, avec un masque respiratoire homologué pour cet usage. Pour l’aspiration, adressez-vous à un professionnel agréé.
food = Aliments et boissons
food-text = La bonne quantité d’émail ne rend pas un émail propre aux aliments. Seule une analyse en laboratoire de la pièce cuite dit ce qui s’en échappe, et c’est la loi locale qui dit ce qui est permis.
crazing = Pièces tressaillées et eau bouillante
crazing-text = Une pièce tressaillée ou épaisse peut se casser quand on y verse de l’eau bouillante. Essayez les pièces qui n’ont pas fait leurs preuves à bout de bras, au-dessus d’un évier, et ne les vendez jamais pour des boissons chaudes sur une simple supposition.
edges = Arêtes coupantes
edges-text = Les gouttes d’émail cuit et les bords ébréchés coupent comme des lames. Lissez-les avant la cuisson, portez des lunettes de protection et des gants pour meuler, et ne touchez pas aux tessons frais.
kiln = Le four
kiln-text = Un four brûle, dégage des fumées et fonctionne sous des tensions dangereuses. Aérez la pièce, éloignez tout ce qui peut brûler, et suivez la notice du fabricant. Laissez l’électricité et le gaz à des professionnels agréés.

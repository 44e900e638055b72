"""What is to be published of a study: figures and tables picked, how pictures look, and words for them."""
